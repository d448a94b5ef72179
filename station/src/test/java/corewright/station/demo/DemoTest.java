package corewright.station.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.record.CueAnswer;
import corewright.bench.record.Dossier;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.bench.run.Stop;
import corewright.fixtures.emulate.unit.Parameter;
import corewright.profiles.Catalogue;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.reports.document.Shop;
import corewright.station.work.Outcome;
import corewright.station.work.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Eight cores through real pseudo-terminals: each verdict is the one that the noise-free physics of
 * the same units asks for, and the station holds nothing that it did not hold before; see {@link
 * BurnIn}. The seeds come from {@code -Ddemo.seeds=1-20}; a plain build tries one.
 */
class DemoTest {
  private static final Shop SHOP = new Shop("Test shop", "Nowhere 1", "", "Write to us.");

  @TempDir private Path folder;

  static LongStream seeds() {
    String[] range = System.getProperty("demo.seeds", "1-1").split("-", 2);
    return LongStream.rangeClosed(Long.parseLong(range[0]), Long.parseLong(range[1]));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everyVerdictIsTheOneThatThePhysicsAsksFor(long seed) {
    assumeTrue(Files.isDirectory(Path.of("/dev/pts")), "no pseudo-terminals on this system");
    Catalogue catalogue = Catalogue.ofHome();
    List<DemoCore.OnTheBench> units = new ArrayList<>();
    DayClock clock = new DayClock();
    try (Workshop workshop = Workshop.open(catalogue, folder, SHOP, "bench-1", clock)) {
      BurnIn burnIn = new BurnIn(clock, workshop.folders().captures(), remembering(units));
      Demo.Result result = new Demo(workshop, clock, seed, burnIn).run(new Stop());
      List<Outcome> outcomes = result.outcomes();
      assertEquals(8, outcomes.size());
      for (int i = 0; i < 8; i++) {
        Outcome o = outcomes.get(i);
        Family family = catalogue.family(o.core().family());
        Verdict asked =
            Physics.verdict(units.get(i), family, catalogue.profile(family.id() + "-arrival"));
        String which = "seed " + seed + " core " + (i + 1) + ": " + o.run().end().saw();
        assertEquals(asked, o.run().judgement().verdict().orElseThrow(), which);
        TradeRule.check(o, family, asked, which);
        switching(o, family, units.get(i), workshop.ledger().dossier(o.core().tag()), which);
        assertEquals(Source.EMULATED, o.run().source());
        assertTrue(Files.isRegularFile(o.document()));
      }
      assertEquals(1, outcomes.stream().filter(DemoTest::labelAgainstHousing).count());
      assertTrue(workshop.ledger().verify().whole());
      BurnIn.Figures held = burnIn.figures();
      assertTrue(held.good() && held.hours() > 1, held.toString());
    }
  }

  /**
   * What the bench told the key is the frequency at which the unit really switches. Of a good unit
   * it must tell; a fault may make its loaded holds disagree, and then nothing is told.
   */
  private static void switching(
      Outcome o, Family family, DemoCore.OnTheBench unit, Dossier dossier, String which) {
    Cue cue = family.cues().stream().filter(c -> c.id().equals("switching")).findFirst().get();
    double hertz = 1 / unit.unit().get(Parameter.PERIOD);
    Optional<CueAnswer> told =
        dossier.answers().stream().filter(a -> a.cue().equals("switching")).findFirst();
    if (o.run().judgement().verdict().equals(Optional.of(Verdict.PASS))) {
      assertEquals(cue.scale().get().answer(hertz), told.map(CueAnswer::answer), which);
    } else {
      told.ifPresent(
          t -> assertEquals(cue.scale().get().answer(hertz), Optional.of(t.answer()), which));
    }
  }

  /** The part number on the label and the bosses of the housing belong to no one build. */
  private static boolean labelAgainstHousing(Outcome o) {
    List<String> conflicts = o.identification().orElseThrow().conflicts();
    return conflicts.stream().anyMatch(c -> c.startsWith("'partNumber'"));
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
