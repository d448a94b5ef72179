package corewright.station.web.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.measures.statistics.Interval;
import corewright.station.work.Returns;
import java.util.List;
import org.junit.jupiter.api.Test;

class SurvivalTest {

  /**
   * Of four in service one fails in the third month: three quarters stay. In a picture that is 218
   * high and begins at 12, a quarter of the way down is at 66.5; the axis is 1.05 times as long as
   * the last step, 580 wide and begins at 60.
   */
  @Test
  void fallsInStepsAtTheMonthInWhichOneFailed() {
    Survival drawn =
        Survival.of(
            List.of(
                new Returns.Alive(
                    3, 4, 1, 0.75, new Interval(0.13, 0.96, 0.95), List.of("U-000012"))));
    assertEquals("M60.0 12.0H612.4V66.5H640.0", drawn.share());
    assertEquals("75.0 %", drawn.rows().get(0).share());
    assertEquals("13 to 96 %", drawn.rows().get(0).interval());
    assertEquals(List.of("0", "1", "2", "3"), drawn.months().stream().map(m -> m.words()).toList());
  }
}
