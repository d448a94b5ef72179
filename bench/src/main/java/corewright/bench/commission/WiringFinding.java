package corewright.bench.commission;

import corewright.measures.Measurement;
import java.util.Optional;

/**
 * What the resistor says of one channel, or of an instrument beside it.
 *
 * @param what as {@code output}, {@code resistor}
 * @param saw one sentence
 * @param remedy one sentence; empty where nothing is to be done
 * @param ratio what it reads of what is there, 1 where it is right; empty where that was not told
 */
public record WiringFinding(
    String what, Kind kind, String saw, String remedy, Optional<Measurement> ratio) {

  /** How it is. */
  public enum Kind {
    RIGHT,
    /** Off by more than can be explained, and by so little that calibration takes it away. */
    TO_CALIBRATE,
    REVERSED,
    WRONG_SCALE,
    NOTHING_READ,
    EXCHANGED,
    OVER_RANGE,
    /** Witnesses disagree, or it cannot be told well enough. */
    IN_DOUBT,
    /** Nothing of it is known here. */
    NOT_LOOKED_AT;

    /** Whether a bench may be used so. */
    public boolean stands() {
      return this == RIGHT || this == TO_CALIBRATE || this == NOT_LOOKED_AT;
    }
  }
}
