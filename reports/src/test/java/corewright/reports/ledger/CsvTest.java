package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvTest {
  /** RFC 4180 for the quotes; a leading apostrophe is what spreadsheets take for text. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '~',
      value = {
        "plain, plain",
        "=1+1, '=1+1",
        "+cmd, '+cmd",
        "@x, '@x",
        "-2.5e-3, -2.5e-3",
        "-2-3, '-2-3",
        "say \"x\", ~\"say \"\"x\"\"\"~",
        "~=a,b~, ~\"'=a,b\"~"
      })
  void noCellIsAFormula(String text, String cell) {
    assertEquals(cell, Csv.cell(text));
  }
}
