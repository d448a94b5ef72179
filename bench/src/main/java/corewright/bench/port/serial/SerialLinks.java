package corewright.bench.port.serial;

import corewright.bench.port.Link;
import corewright.bench.port.Links;
import corewright.bench.port.PortInfo;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.Characters;
import java.util.List;

/** The serial ports of this computer. */
public final class SerialLinks implements Links {
  private final Clock clock;

  /**
   * @param clock what deadlines are held against
   */
  public SerialLinks(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Link open(String role, String port, int baud, Characters characters) {
    return SerialLink.open(role, port, baud, characters, clock);
  }

  /** Every port that the system knows. Asks none of them anything. */
  public List<PortInfo> list() {
    return SerialLink.list();
  }
}
