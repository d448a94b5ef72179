package corewright.bench.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.profiles.Grade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoreCreditTest {
  /** By hand from the trade's table of grades (common practice, no source). */
  @ParameterizedTest
  @CsvSource({
    "A, -3, 100, 100", "A, 0, 100, 100", "A, 1, 90, 90", "A, 7, 90, 90", "A, 8, 80, 80",
    "B, 0, 80, 100", "C, 14, 20, 40", "C, 700, 10, 10", "D, 0, 10, 20", "D, 30, 10, 10",
    "X, 0, 0, 0", "X, 99, 0, 0"
  })
  void theGradeSaysWhatIsUsualAndWeeksTakeFromIt(Grade grade, long late, int least, int most) {
    assertEquals(new CoreCredit(least, most), CoreCredit.usual(grade, late));
  }

  @Test
  void whatIsOutsideTheRangeIsNotUsual() {
    CoreCredit c = CoreCredit.usual(Grade.C, 0);
    assertTrue(c.holds(40) && c.holds(60));
    assertFalse(c.holds(39) || c.holds(61));
  }
}
