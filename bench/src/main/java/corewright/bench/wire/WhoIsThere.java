package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import java.time.Duration;

/** Asks whatever hangs on a line who it is. Used before anything is known about it. */
public final class WhoIsThere {
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  private WhoIsThere() {}

  /**
   * The answer to {@code *IDN?}.
   *
   * @param link an open line; stays open
   * @throws InstrumentFault if there is no answer within a second, or the line is lost
   * @see "IEEE 488.2-1992, 10.14 *IDN?"
   */
  public static String ask(Link link, Clock clock) {
    return ask(link, clock, PATIENCE);
  }

  static String ask(Link link, Clock clock, Duration patience) {
    return new TextLine("port", link, clock, "\n", "\n", patience).ask("*IDN?").strip();
  }
}
