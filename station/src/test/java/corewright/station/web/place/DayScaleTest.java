package corewright.station.web.place;

import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.station.web.HouseClock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The time of day stands beside its pointer, at any hour. */
class DayScaleTest {
  /** Five figures of 28 units, each half as wide as it is high, with the point between them. */
  private static final double CLOCK = 70;

  @ParameterizedTest
  @ValueSource(strings = {"05:10", "07:00", "12:00", "16:59", "17:05", "17:46", "18:00", "23:50"})
  void theTimeStandsWhollyInThePicture(String time) {
    DayScale scale =
        DayScale.of(
            List.of(),
            List.of(),
            LocalDate.of(2026, 11, 29)
                .atTime(LocalTime.parse(time))
                .atZone(HouseClock.zone())
                .toInstant());
    boolean before = scale.clockAnchor().equals("end");
    double from = before ? scale.clockX() - CLOCK : scale.clockX();
    assertTrue(from >= 0 && from + CLOCK <= DayScale.WIDTH, time + " from " + from);
    assertTrue(before ? from + CLOCK < scale.now() : from > scale.now(), time + ": on its pointer");
  }
}
