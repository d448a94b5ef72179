package corewright.bench.wire;

import corewright.bench.port.Interlock;

/** A reader of the interlock chain that speaks a dialect. */
final class ScpiInterlock extends ScpiInstrument implements Interlock {

  ScpiInterlock(String role, ScpiSession session) {
    super(role, session);
  }

  @Override
  public boolean whole() {
    return session.state("whole");
  }
}
