package corewright.station.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.record.Disposition;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.bench.run.Clock;
import corewright.bench.run.Stop;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.reports.document.Shop;
import corewright.station.work.Outcome;
import corewright.station.work.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Eight cores through real pseudo-terminals: each verdict is the one that the noise-free physics of
 * the same units asks for. The seeds come from {@code -Ddemo.seeds=1-20}; a plain build tries two.
 */
class DemoTest {
  private static final Shop SHOP = new Shop("Test shop", "Nowhere 1", "", "Write to us.");

  @TempDir private Path folder;

  static LongStream seeds() {
    String[] range = System.getProperty("demo.seeds", "1-2").split("-", 2);
    return LongStream.rangeClosed(Long.parseLong(range[0]), Long.parseLong(range[1]));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyVerdictIsTheOneThatThePhysicsAsksFor(long seed) {
    assumeTrue(Files.isDirectory(Path.of("/dev/pts")), "no pseudo-terminals on this system");
    Catalogue catalogue = Catalogue.ofHome();
    List<DemoCore.OnTheBench> units = new ArrayList<>();
    try (Workshop workshop = Workshop.open(catalogue, folder, SHOP, "bench-1", Clock.system())) {
      Demo.Result result =
          new Demo(workshop, Clock.system(), seed, remembering(units)).run(new Stop());
      List<Outcome> outcomes = result.outcomes();
      assertEquals(8, outcomes.size());
      for (int i = 0; i < 8; i++) {
        Outcome o = outcomes.get(i);
        if (DemoCores.ALL.get(i).name().equals("7-swapped-label")) {
          assertEquals(Disposition.PENDING, o.decision().disposition());
          assertTrue(o.decision().question().endsWith("?"), o.decision().question());
        } else {
          Family family = catalogue.family(o.core().family());
          Verdict asked =
              Physics.verdict(units.get(i), family, catalogue.profile(family.id() + "-arrival"));
          assertEquals(
              asked,
              o.run().judgement().verdict().orElseThrow(),
              "seed " + seed + " core " + (i + 1));
        }
        assertEquals(Source.EMULATED, o.run().source());
        assertTrue(Files.isRegularFile(o.document()));
      }
      assertTrue(workshop.ledger().verify().whole());
    }
  }

  private static DemoProgress remembering(List<DemoCore.OnTheBench> units) {
    return new DemoProgress() {
      @Override
      public void drawn(DemoCore.OnTheBench unit) {
        units.add(unit);
      }
    };
  }
}
