package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Quantity;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Whether the stated uncertainties are honest: every reading of the recorded captures beside its
 * truth. The table in this room's README is made here; the test fails when the page differs. Write
 * it anew with {@code -Dcorewright.write=true}.
 */
class CapturesTableTest {
  private static final List<Against> ALL =
      RecordedCapture.NAMES.stream().flatMap(name -> Against.all(name).stream()).toList();

  @Test
  void nearlyEveryReadingIsWithinItsUAndNoneBeyondTwo() {
    long within = ALL.stream().filter(a -> a.ratio() <= 1).count();
    assertTrue(within >= 0.95 * ALL.size(), within + " of " + ALL.size());
    List<Against> beyond = ALL.stream().filter(a -> a.ratio() > 2).toList();
    assertEquals(List.of(), beyond);
  }

  @Test
  void uIsNotInflatedWhereNoiseIsWhatItIsMadeOf() {
    double[] ratios =
        ALL.stream()
            .filter(a -> a.record().endsWith("_noisy12") && a.isLevelOrDroop())
            .mapToDouble(Against::ratio)
            .sorted()
            .toArray();
    double median = ratios[ratios.length / 2];
    assertTrue(median >= 0.2, "median of |difference| / U: " + median);
  }

  @Test
  void theReadmeShowsTheTable() throws IOException {
    Path page = Path.of(System.getProperty("corewright.home"), "measures", "README.md");
    String text = Files.readString(page);
    String begin = "<!-- made by CapturesTableTest -->\n";
    String end = "<!-- end -->";
    int from = text.indexOf(begin) + begin.length();
    int to = text.indexOf(end, from);
    String made = summary() + details();
    if (Boolean.getBoolean("corewright.write")) {
      Files.writeString(page, text.substring(0, from) + made + text.substring(to));
      return;
    }
    assertEquals(made, text.substring(from, to), "run with -Dcorewright.write=true");
  }

  private static String summary() {
    StringBuilder out = new StringBuilder();
    out.append("| quantity | readings | median of \\|difference\\| / U | largest | beyond U |\n");
    out.append("|---|---|---|---|---|\n");
    for (Quantity quantity : Quantity.values()) {
      double[] ratios =
          ALL.stream()
              .filter(a -> a.quantity() == quantity)
              .mapToDouble(Against::ratio)
              .sorted()
              .toArray();
      if (ratios.length > 0) {
        out.append(
            String.format(
                Locale.ROOT,
                "| %s | %d | %.2f | %.2f | %d |\n",
                quantity.id(),
                ratios.length,
                ratios[ratios.length / 2],
                ratios[ratios.length - 1],
                Arrays.stream(ratios).filter(r -> r > 1).count()));
      }
    }
    return out.toString();
  }

  private static String details() {
    return "\n<details><summary>Every reading</summary>\n\n"
        + "| record | hold | quantity | truth | reading | difference | U (k = 2) | unit |\n"
        + "|---|---|---|---|---|---|---|---|\n"
        + ALL.stream().map(CapturesTableTest::row).collect(Collectors.joining())
        + "\n</details>\n";
  }

  private static String row(Against a) {
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %s | %s | %s | %s | %s |\n",
        a.record(),
        a.hold() < 0 ? "run" : String.valueOf(a.hold()),
        a.quantity().id(),
        digits(a.truth(), 7),
        digits(a.read().value(), 7),
        digits(a.read().value() - a.truth(), 2),
        digits(a.read().expanded(2), 2),
        a.read().unit().symbol());
  }

  private static String digits(double value, int count) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(count));
    boolean tiny = Math.abs(value) < 1e-12;
    return tiny ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
