package corewright.bench.wire;

import corewright.bench.port.Instrument;

/** What all instruments that speak a dialect have in common. */
abstract class ScpiInstrument implements Instrument {
  private final String role;
  final ScpiSession session;

  ScpiInstrument(String role, ScpiSession session) {
    this.role = role;
    this.session = session;
  }

  @Override
  public String role() {
    return role;
  }

  @Override
  public String identity() {
    return session.identity();
  }

  @Override
  public void off() {
    session.off();
  }

  @Override
  public void close() {
    session.close();
  }
}
