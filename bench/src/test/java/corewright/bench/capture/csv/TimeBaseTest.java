package corewright.bench.capture.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.files.BadFile;
import corewright.measures.Capture;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeBaseTest {
  private final TimeBase time = new TimeBase("a.csv", "column 1", 0);

  /** Microseconds, one by one. */
  private void even(int rows) {
    for (int i = 0; i < rows; i++) {
      assertEquals(0, time.add(100 + i, 6, i + 2));
    }
  }

  @Test
  void evenTimesAreARate() {
    even(5000);
    assertEquals(1e6, time.sampleRate_Hz());
    assertEquals(1e-4, time.first_s());
  }

  /** A clock that runs on 4 % slower after a while is no longer on the line. */
  @Test
  void aChangeOfRateIsRefused() {
    TimeBase fine = new TimeBase("a.csv", "column 1", 0);
    for (int i = 0; i < 1000; i++) {
      fine.add(100L * i, 8, i + 2);
    }
    BadFile bad =
        assertThrows(
            BadFile.class,
            () -> {
              for (int i = 0; i < 10; i++) {
                fine.add(100L * 999 + 104L * (i + 1), 8, 1002 + i);
              }
            });
    assertTrue(bad.mistakes().get(0).line() < 1006, () -> String.valueOf(bad.mistakes()));
  }

  @ParameterizedTest
  @CsvSource({"2, 0", "30, 2", "1000, 3"})
  void whatIsMissingAfterEvenTimesIsCounted(int rows, int missing) {
    even(rows);
    assertEquals(missing, time.add(100 + rows + missing, 6, rows + 2));
    assertEquals(0, time.add(101 + rows + missing, 6, rows + 3));
    assertEquals(1e6, time.sampleRate_Hz());
    assertEquals(missing == 0 ? List.of() : List.of(new Capture.Gap(rows, missing)), time.gaps());
  }

  @ParameterizedTest
  @CsvSource({"1099", "1050", "0"})
  void aTimeThatDoesNotRiseIsRefused(long mantissa) {
    even(1000);
    assertThrows(BadFile.class, () -> time.add(mantissa, 6, 1002));
  }

  @Test
  void moreDecimalsContinueTheLine() {
    even(1000);
    assertEquals(0, time.add(11_000, 7, 1002));
    assertEquals(0, time.add(1101, 6, 1003));
    assertEquals(1e6, time.sampleRate_Hz());
    assertThrows(BadFile.class, () -> time.add(11_015, 7, 1004));
  }

  /** Thirds of a microsecond, rounded: on a line though no two steps in a row need be the same. */
  @Test
  void roundedTimesAreOnALineToo() {
    for (int i = 0; i < 9000; i++) {
      assertEquals(0, time.add(Math.round(i * 10 / 3.0), 7, i + 2));
    }
    assertEquals(3e6, time.sampleRate_Hz(), 3e6 * 1e-4);
  }
}
