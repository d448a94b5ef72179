package corewright.bench.port;

import corewright.bench.port.Digitizer.Status;
import java.util.Optional;

/**
 * Holds the fixture's feed relay as long as it hears from us: silence opens it, and connects the
 * discharge resistor. {@link #off} opens it.
 */
public interface Relay extends Instrument {

  /** The fixture that is plugged in, by its own identification; empty if it cannot say. */
  Optional<String> fixture();

  /** Opens or closes the feed relay; closing fails while the interlock chain is open. */
  void relay(boolean closed);

  /** Says that the station is alive, and tells how the fixture stands. */
  Status heartbeat();

  /**
   * Says that the station is alive while samples stream in. Where their line would be held up by
   * waiting for the answer, the answer is looked for the next time.
   */
  default void alive() {
    heartbeat();
  }
}
