package corewright.measures.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantileRanksTest {

  /** 95 %, scipy 1.17 {@code quantile_test(arange(1, n + 1), p=share).confidence_interval(.95)}. */
  @ParameterizedTest
  @CsvSource({
    "5, 0.5, 0, 6",
    "6, 0.5, 1, 6",
    "10, 0.5, 2, 9",
    "25, 0.5, 8, 18",
    "20, 0.9, 15, 21",
    "40, 0.9, 32, 40",
    "100, 0.9, 84, 96",
    "1000, 0.5, 469, 532",
    "100000, 0.9, 89814, 90187",
  })
  void agreesWithAnotherProgram(int n, double share, int low, int high) {
    assertEquals(new QuantileRanks(low, high), QuantileRanks.of(n, share, 0.95));
  }

  @Test
  void refusesPercent() {
    assertThrows(IllegalArgumentException.class, () -> QuantileRanks.of(10, 50, 0.95));
    assertThrows(IllegalArgumentException.class, () -> QuantileRanks.of(10, 0.5, 95));
  }
}
