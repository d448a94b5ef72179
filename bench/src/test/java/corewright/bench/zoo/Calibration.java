package corewright.bench.zoo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Stated probabilities against how often they came true. */
final class Calibration {
  private static final int CLASSES = 5;

  private record Said(double probability, boolean came) {}

  private final List<Said> all = new ArrayList<>();

  void add(double probability, boolean came) {
    all.add(new Said(probability, came));
  }

  /** Mean square of what was said less what came (Brier 1950). */
  double brier() {
    return all.stream()
        .mapToDouble(s -> Math.pow(s.probability() - (s.came() ? 1 : 0), 2))
        .average()
        .orElse(0);
  }

  /** Mean distance between said and seen over the classes, weighed by their size. */
  double expectedError() {
    double sum = 0;
    for (int k = 0; k < CLASSES; k++) {
      List<Said> in = in(k);
      sum += Math.abs(said(in) - seen(in)) * in.size();
    }
    return all.isEmpty() ? 0 : sum / all.size();
  }

  /** One line for each fifth of the scale, with a bar of twenty. */
  String table() {
    StringBuilder lines = new StringBuilder("| stated | came true | n | |\n|---|---|---|---|\n");
    for (int k = 0; k < CLASSES; k++) {
      List<Said> in = in(k);
      if (!in.isEmpty()) {
        lines.append(
            String.format(
                Locale.ROOT,
                "| %.2f | %.2f | %d | `%s` |%n",
                said(in),
                seen(in),
                in.size(),
                bar(said(in), seen(in))));
      }
    }
    return lines.toString();
  }

  /** How often it came true as {@code #}, and where it was said as {@code |}. */
  private static String bar(double said, double seen) {
    StringBuilder bar = new StringBuilder();
    for (int i = 0; i <= 20; i++) {
      bar.append(i == Math.round(20 * said) ? '|' : i < Math.round(20 * seen) ? '#' : '.');
    }
    return bar.toString();
  }

  private List<Said> in(int k) {
    return all.stream()
        .filter(s -> Math.min(CLASSES - 1, (int) (s.probability() * CLASSES)) == k)
        .toList();
  }

  private static double said(List<Said> in) {
    return in.stream().mapToDouble(Said::probability).average().orElse(0);
  }

  private static double seen(List<Said> in) {
    return in.stream().mapToDouble(s -> s.came() ? 1 : 0).average().orElse(0);
  }
}
