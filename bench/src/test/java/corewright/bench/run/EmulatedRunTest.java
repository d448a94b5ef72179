package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.port.serial.SerialLinks;
import corewright.bench.record.RunEnd;
import corewright.bench.record.Source;
import corewright.bench.wire.BenchOpener;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.line.PtyLine;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.profiles.Catalogue;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EmulatedRunTest {
  @TempDir Path folder;

  @Test
  void aGoodUnitRunsThroughRealBytes() throws IOException {
    assumeTrue(PtyLine.isPossible(), "pseudo-terminals are made on Linux only");
    Clock clock = Clock.system();
    try (EmulatedBench emulated = EmulatedBench.open(UnitParameters.healthy("sd48"), 1)) {
      BenchDescription description =
          Descriptions.shippedBench("emulated-sd48").withPorts(emulated.ports());
      try (BenchInstruments bench =
          new BenchOpener(new SerialLinks(clock), Descriptions::shippedDialect, clock)
              .open(description)) {
        RunPlan plan =
            new RunPlan(
                "run-1",
                "CW-1",
                Catalogue.ofHome().family("sd48"),
                Catalogue.ofHome().profile("sd48-arrival"),
                description,
                "Ada",
                folder,
                new Confirmations(true, Optional.empty(), Optional.empty(), List.of()));
        RunResult result = new RunEngine(clock).run(plan, bench, RunListener.NONE, new Stop());
        assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
        assertEquals(Source.EMULATED, result.source());
      }
    }
  }
}
