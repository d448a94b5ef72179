package corewright.reports.document;

import static org.junit.jupiter.api.Assertions.assertFalse;

import corewright.measures.Quantity;
import corewright.reports.chart.Words;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A certificate shows every reading of its run (ISO/IEC 17025:2017, 7.8.2.1 m): one without a name
 * on paper would stop all paper of all units.
 */
class QuantityWordsTest {
  @ParameterizedTest
  @EnumSource(Quantity.class)
  void everyReadingHasItsNameOnPaper(Quantity quantity) {
    Words words = Words.of(Page.class, Locale.ENGLISH);
    assertFalse(words.get("quantity." + quantity.id()).isBlank());
  }
}
