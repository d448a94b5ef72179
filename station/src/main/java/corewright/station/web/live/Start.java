package corewright.station.web.live;

import corewright.bench.record.HandReading;
import corewright.station.work.SecondPerson;
import java.util.Map;
import java.util.Optional;

/**
 * Who wants to run what.
 *
 * @param profile its id
 * @param driver who has confirmed the cautions and drives
 * @param second who else is there; demanded above 60 V DC
 * @param byHand what was read elsewhere, by id of the step
 * @param wireLog whether every byte on the wires is kept
 */
record Start(
    String tag,
    String profile,
    String driver,
    Optional<SecondPerson> second,
    Map<String, HandReading> byHand,
    boolean wireLog) {

  Start {
    byHand = Map.copyOf(byHand);
  }

  /** A run in which nobody has read anything elsewhere. */
  Start(String tag, String profile, String driver, Optional<SecondPerson> second) {
    this(tag, profile, driver, second, Map.of(), false);
  }
}
