package corewright.bench.run;

import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.line.LineKind;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;

/** Drivers and emulated instruments over loopback sockets, as on systems without a pty. */
class LoopbackBenchContractTest extends BenchContract {
  private Optional<OnPty> sockets = Optional.empty();

  @Override
  BenchInstruments fresh() throws IOException {
    if (sockets.isEmpty()) {
      sockets =
          Optional.of(
              new OnPty(Setup.of(UnitParameters.healthy("sd48"), 1).over(LineKind.LOOPBACK)));
    }
    return sockets.get().open();
  }

  @AfterEach
  void unplug() {
    sockets.ifPresent(OnPty::close);
  }
}
