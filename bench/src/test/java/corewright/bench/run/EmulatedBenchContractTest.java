package corewright.bench.run;

import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;

/** Drivers and emulated instruments over pseudo-terminals. */
class EmulatedBenchContractTest extends BenchContract {
  private Optional<OnPty> pty = Optional.empty();

  @Override
  BenchInstruments fresh() throws IOException {
    if (pty.isEmpty()) {
      pty = Optional.of(new OnPty(Setup.of(UnitParameters.healthy("sd48"), 1)));
    }
    return pty.get().open();
  }

  @AfterEach
  void unplug() {
    pty.ifPresent(OnPty::close);
  }
}
