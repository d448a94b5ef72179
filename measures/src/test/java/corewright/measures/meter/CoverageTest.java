package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Quantity;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * The stated 95 % intervals hold the truth in 95 % of synthetic records. Small here; {@code
 * .ci/soak/coverage} makes 10,000 records ({@code -Dcoverage.records}) and prints the table.
 */
class CoverageTest {
  private static final int RECORDS = Integer.getInteger("coverage.records", 300);

  private static final Set<Quantity> TWO_SIDED =
      EnumSet.of(
          Quantity.LOAD,
          Quantity.OUTPUT,
          Quantity.INPUT,
          Quantity.DROOP,
          Quantity.OUTPUT_RESISTANCE,
          Quantity.DRIFT,
          Quantity.RIPPLE_RMS);

  @Test
  void intervalsCoverWhatTheyStateAndAreNotInflated() {
    List<CoverageStudy.Line> lines = CoverageStudy.of(RECORDS, 20).lines();
    if (Integer.getInteger("coverage.records") != null) {
      print(lines);
    }
    assertTrue(lines.size() >= 11, lines.toString());
    for (CoverageStudy.Line line : lines) {
      // What 95 % of so few readings scatter by; one record's readings share their droop's zero.
      double luck = RECORDS < 5000 ? 3 * Math.sqrt(0.95 * 0.05 / RECORDS) : 0;
      double least = 0.94 - luck;
      assertTrue(line.covered() >= least, line.toString());
      if (TWO_SIDED.contains(line.quantity())) {
        assertTrue(line.covered() <= 0.965 + luck, line.toString());
      } else {
        assertTrue(line.width() <= 1.3, line.toString());
      }
    }
  }

  private static void print(List<CoverageStudy.Line> lines) {
    lines.forEach(System.out::println);
    CoverageStudy.Line worst =
        lines.stream().min(Comparator.comparingDouble(CoverageStudy.Line::covered)).orElseThrow();
    CoverageStudy.Line widest =
        lines.stream().max(Comparator.comparingDouble(CoverageStudy.Line::width)).orElseThrow();
    System.out.printf(
        Locale.ROOT,
        "coverage: quantities=%d worst=%s:%.2f%% widest=%s:%.2f%n",
        lines.size(),
        worst.quantity().id(),
        100 * worst.covered(),
        widest.quantity().id(),
        widest.width());
  }
}
