package corewright.measures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * No evidence of finite weight gives a probability of 0 or 1 where the prior was neither (Bayes'
 * theorem; Lindley called it Cromwell's rule), so none is told as one.
 */
class ChanceTest {
  @ParameterizedTest
  @CsvSource({
    "1, over 0.99",
    "0.9951, over 0.99",
    "0.99, 0.99",
    "0.826, 0.83",
    "0.01, 0.01",
    "0.0099, under 0.01",
    "0, under 0.01"
  })
  void isNeverToldAsCertain(double probability, String words) {
    assertEquals(words, Chance.words(probability));
  }
}
