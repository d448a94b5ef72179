package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.run.RunListener;
import corewright.bench.run.Stop;
import corewright.bench.wire.BenchOpener;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Catalogue;
import corewright.reports.ledger.RunBegun;
import corewright.station.demo.SampleCore;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A profile of another family has no limits for the unit; a bench is not blocked by a slip. */
class OtherFamilyTest {
  private static final Clock CLOCK = Clock.system();

  @TempDir private Path folder;

  @Test
  void itsRunIsRefusedBeforeTheRecordKnowsAndOneThatWasBegunCanBeClosed() throws IOException {
    try (Workshop shop =
            Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), "b", CLOCK);
        EmulatedBench emulated = EmulatedBench.open(UnitParameters.healthy("sd48"), 1)) {
      String tag = SampleCore.receive(shop, "sd48");
      BenchDescription bench =
          Descriptions.shippedBench("emulated-sd48").withPorts(emulated.ports());
      BenchOpener opener =
          new BenchOpener(
              new SocketLinks(CLOCK, new SerialLinks(CLOCK)), Descriptions::shippedDialect, CLOCK);
      try (BenchInstruments open = opener.open(bench)) {
        Refused refused = assertThrows(Refused.class, () -> run(shop, bench, tag, open));
        assertTrue(refused.remedy().startsWith("Choose one of sd48-arrival, "), refused.remedy());
        assertEquals(List.of(), shop.ledger().dossier(tag).runs());
        assertEquals(List.of(), shop.ledger().runs().unfinished());

        shop.ledger().runBegun(begun(tag, bench)); // as an older program did
        List<RunRecord> closed = shop.recovery().settle(open, bench.id());
        assertEquals(Optional.of(Verdict.INCOMPLETE), closed.get(0).judgement().verdict());
        assertEquals(List.of(), shop.ledger().runs().unfinished());
      }
    }
  }

  private static void run(Workshop shop, BenchDescription bench, String tag, BenchInstruments on) {
    shop.testing()
        .run(
            new Testing.Request(tag, "ie110-arrival", bench, "Ada", true, Optional.empty()),
            on,
            new RunIds(bench.id(), new SplittableRandom(1)),
            RunListener.NONE,
            new Stop());
  }

  private static RunBegun begun(String tag, BenchDescription bench) {
    return new RunBegun(
        "a run",
        tag,
        "arrival",
        1,
        Source.EMULATED,
        Instant.now(),
        "Ada",
        bench.id(),
        bench.fixture().id(),
        "ie110-arrival",
        "captures/a run",
        "");
  }
}
