package corewright.station.cli;

import corewright.station.work.Refused;
import java.time.LocalDate;

/** A day until which something holds: one that is over would make nothing but doubt. */
final class FutureDay {
  private FutureDay() {}

  /**
   * Refuses a day that is past.
   *
   * @throws Refused if it is
   */
  static void require(LocalDate due, LocalDate today) {
    if (due.isBefore(today)) {
      throw new Refused(
          "Due again on " + due + ", and today is " + today, "Give --due a day to come.");
    }
  }
}
