package corewright.bench.capture.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlainNumberTest {
  private final PlainNumber number = new PlainNumber('.');

  /** Against java.math.BigDecimal, with anything behind the number. */
  @Test
  void readsWhatBigDecimalReads() {
    Random random = new Random(1);
    for (int i = 0; i < 200_000; i++) {
      String text = plain(random);
      BigDecimal expected = new BigDecimal(text);
      assertTrue(isAt(text + ",;\n\r\t x".charAt(random.nextInt(7))), text);
      assertEquals(expected.unscaledValue().longValueExact(), number.mantissa(), text);
      assertEquals(expected.scale(), number.places(), text);
      assertEquals(text.length(), number.end(), text);
    }
  }

  private static String plain(Random random) {
    String sign = new String[] {"", "-", "+"}[random.nextInt(3)];
    String whole = digits(random, random.nextInt(8));
    int most = whole.length() == 0 ? 7 : 14 - whole.length();
    String part = digits(random, whole.isEmpty() ? 1 + random.nextInt(most) : random.nextInt(most));
    boolean pointed = !part.isEmpty() || random.nextBoolean();
    return sign + whole + (pointed ? "." + part : "");
  }

  private static String digits(Random random, int count) {
    StringBuilder digits = new StringBuilder();
    for (int i = 0; i < count; i++) {
      digits.append((char) ('0' + random.nextInt(10)));
    }
    return digits.toString();
  }

  private boolean isAt(String text) {
    byte[] bytes = new byte[text.length() + PlainNumber.LONGEST];
    byte[] written = text.getBytes(StandardCharsets.ISO_8859_1);
    System.arraycopy(written, 0, bytes, 0, written.length);
    return number.isAt(bytes, 0);
  }

  /** Nothing, signs alone, points alone, text, and numbers of more digits than it takes. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        ",",
        "-",
        "+,",
        "-.",
        ".",
        "..",
        "x",
        " 1",
        "nan",
        "12345678",
        "12345678.5",
        "1.23456789012345678",
        "ÿ1",
        "µ",
        "--1"
      })
  void leavesTheRest(String text) {
    assertFalse(isAt(text), text);
  }

  /** What follows tells the caller that the field was not plain after all. */
  @ParameterizedTest
  @CsvSource({"1.5E-3, 3", "1.5.2, 3", "47.9V, 4", "1e5, 1", "12 , 2", "-0.5 V, 4"})
  void endsAtTheFirstByteThatIsNotOfIt(String text, int end) {
    assertTrue(isAt(text));
    assertEquals(end, number.end());
  }

  @Test
  void takesACommaForThePoint() {
    PlainNumber comma = new PlainNumber(',');
    assertTrue(comma.isAt("47,9688;                ".getBytes(StandardCharsets.US_ASCII), 0));
    assertEquals(479_688, comma.mantissa());
    assertEquals(4, comma.places());
  }
}
