package corewright.station.web.live;

import corewright.bench.hand.Hands;
import corewright.bench.run.BenchInstruments;
import corewright.fixtures.describe.BenchDescription;
import corewright.station.work.KeptWire;

/** A bench that can be opened for a run. */
interface Bench {

  /** What it is, before it is opened. */
  BenchDescription description();

  /** Whether it is emulated: everything on it is a specimen. */
  boolean emulated();

  /**
   * Opens it and asks its instruments who they are. Energises nothing.
   *
   * @param hands whoever sets its load, where a hand does
   * @param wire keeps what goes over its wires, where that was asked for
   * @throws RuntimeException that says what is missing
   */
  Opened open(Unit unit, Hands hands, KeptWire wire);

  /**
   * What is put on it. An emulated bench makes a unit from this.
   *
   * @param rebuilt whether it was rebuilt here, and is whole again
   */
  record Unit(String tag, String family, boolean rebuilt) {}

  /** An opened bench; closing gives every port back. */
  interface Opened extends AutoCloseable {
    BenchDescription description();

    BenchInstruments instruments();

    @Override
    void close();
  }
}
