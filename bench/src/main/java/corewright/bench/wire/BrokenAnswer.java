package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;

/** An answer that did not come whole, or was another's: it says nothing, and the next one may. */
final class BrokenAnswer extends InstrumentFault {
  private static final long serialVersionUID = 1L;

  BrokenAnswer(String instrument, String doing, String found) {
    super(
        instrument,
        doing,
        found,
        "Check the cable, its shield and its termination, the line rate, and that no other master"
            + " asks on this line.");
  }
}
