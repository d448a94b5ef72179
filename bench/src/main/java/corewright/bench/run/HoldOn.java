package corewright.bench.run;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Source;

/**
 * A fixture that has once been left alone holds its discharge resistor on, whatever the switch is
 * told, until its relay is closed (WIRE.md, Safety). Looked through such a fixture every unit would
 * stay down and seem to be short.
 */
final class HoldOn {
  private static final double NOTHING_V = 1;

  private HoldOn() {}

  /**
   * Closes the relay for a moment and opens it again, with a source that says that it is off.
   *
   * @throws InstrumentFault if the source does not say so
   */
  static void letGo(BenchInstruments bench) {
    if (!bench.relay().heartbeat().watchdogTripped()) {
      return;
    }
    if (!isOff(bench.source())) {
      throw new InstrumentFault(
          "source",
          "before the fixture's relay is closed",
          "it is on after it was switched off",
          "Pull its plug.");
    }
    bench.relay().relay(true);
    bench.relay().relay(false);
  }

  private static boolean isOff(Source source) {
    return source.isOn().map(on -> !on).orElseGet(() -> source.voltage().value() < NOTHING_V);
  }
}
