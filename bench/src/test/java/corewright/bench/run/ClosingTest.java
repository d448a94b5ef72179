package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.fixtures.emulate.EmulatedBench.Setup;
import corewright.fixtures.emulate.unit.UnitParameters;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/**
 * Bytes that were written just before a port is closed can be lost: most were when it was tried.
 */
class ClosingTest {

  @Test
  void aCommandJustBeforeClosingIsNeverLost() throws IOException {
    try (OnPty pty = new OnPty(Setup.of(UnitParameters.healthy("sd48"), 1))) {
      for (int i = 0; i < 25; i++) {
        try (BenchInstruments bench = pty.open()) {
          bench.source().set(2, 0.5);
          bench.source().output(true);
          bench.discharge().discharge(false);
          assertTrue(pty.emulated.state().sourceOn());
          bench.source().off();
          bench.discharge().off();
        }
        assertFalse(pty.emulated.state().sourceOn(), "round " + i);
        assertTrue(pty.emulated.state().discharging(), "round " + i);
      }
    }
  }
}
