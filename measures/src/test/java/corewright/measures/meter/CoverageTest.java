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
  private static final int RECORDS = Integer.getInteger("coverage.records", 120);

  /** Of those that take longer. */
  private static final int OTHERS = Integer.getInteger("coverage.records", 50);

  /** Of the first record; the soak takes others than the test. */
  private static final long SEED = Long.getLong("coverage.seed", 20);

  /** Means, droop, slopes and rms: not more often either. */
  private static final Set<Quantity> TWO_SIDED =
      EnumSet.of(
          Quantity.LOAD,
          Quantity.OUTPUT,
          Quantity.INPUT,
          Quantity.INPUT_CURRENT,
          Quantity.DROOP,
          Quantity.LOAD_REGULATION,
          Quantity.OUTPUT_RESISTANCE,
          Quantity.DRIFT,
          Quantity.RIPPLE_RMS,
          Quantity.RIPPLE_RMS_DETRENDED,
          Quantity.RIPPLE_RMS_IN_BAND,
          Quantity.LINE_REGULATION);

  /** Extremes and recovery: U is at most 1.3 times what would do. */
  private static final Set<Quantity> EXTREMES =
      EnumSet.of(
          Quantity.RIPPLE_PEAK_TO_PEAK,
          Quantity.RIPPLE_PEAK_TO_PEAK_IN_BAND,
          Quantity.UNDERSHOOT,
          Quantity.OVERSHOOT,
          Quantity.RECOVERY,
          Quantity.RECOVERY_QUARTER,
          Quantity.RECOVERY_BAND,
          Quantity.TIME_OF_MINIMUM,
          Quantity.OUTPUT_MINIMUM,
          Quantity.INPUT_MINIMUM,
          Quantity.START_OVERSHOOT,
          Quantity.INRUSH);

  @Test
  void intervalsCoverWhatTheyStateAndAreNotInflated() {
    Coverage coverage =
        new Coverage()
            .of(RECORDS, SEED, CoverageStudy::record)
            .of(OTHERS, SEED, StoredCoverage::record)
            .of(OTHERS, SEED, MovingCoverage::record)
            .of(OTHERS, SEED, RippleCoverage::record);
    List<Coverage.Line> lines = coverage.lines();
    if (Integer.getInteger("coverage.records") != null) {
      print(lines);
    }
    for (Coverage.Line line : lines) {
      // Strict from 5,000 records on; before, what 95 % of so few records scatter by.
      double few = RECORDS < 5000 ? 3 / Math.sqrt(Math.min(OTHERS, line.count())) : 0;
      double luck = few * Math.sqrt(0.95 * 0.05);
      assertTrue(line.covered() >= 0.94 - luck, line.toString());
      if (TWO_SIDED.contains(line.quantity())) {
        assertTrue(line.covered() <= 0.965 + luck, line.toString());
      }
      if (EXTREMES.contains(line.quantity())) {
        assertTrue(line.width() <= 1.3 * (1 + few), line.toString());
      }
    }
  }

  private static void print(List<Coverage.Line> lines) {
    lines.forEach(System.out::println);
    Coverage.Line worst =
        lines.stream().min(Comparator.comparingDouble(Coverage.Line::covered)).orElseThrow();
    Coverage.Line widest =
        lines.stream().max(Comparator.comparingDouble(Coverage.Line::width)).orElseThrow();
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
