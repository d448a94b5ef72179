package corewright.bench.zoo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Stated probabilities against how often they came true. */
final class Calibration {
  static final int CLASSES = 10;

  private record Said(double probability, boolean came) {}

  /**
   * One tenth of the scale.
   *
   * @param stated mean of what was stated
   * @param observed share that came true
   * @param low lower end of its 95 % interval
   * @param high upper end
   * @see "Wilson, Probable inference, J. Amer. Statist. Assoc. 22 (1927) 209"
   */
  record Bin(int n, double stated, double observed, double low, double high) {}

  private final List<Said> all = new ArrayList<>();

  void add(double probability, boolean came) {
    all.add(new Said(probability, came));
  }

  /** The tenths of the scale in which something was stated. */
  List<Bin> bins() {
    return IntStream.range(0, CLASSES)
        .mapToObj(this::in)
        .filter(in -> !in.isEmpty())
        .map(Calibration::bin)
        .toList();
  }

  private List<Said> in(int k) {
    return all.stream()
        .filter(s -> Math.min(CLASSES - 1, (int) (s.probability() * CLASSES)) == k)
        .toList();
  }

  private static Bin bin(List<Said> in) {
    double n = in.size();
    double p = in.stream().filter(Said::came).count() / n;
    double z = 1.96;
    double middle = (p + z * z / (2 * n)) / (1 + z * z / n);
    double half = z / (1 + z * z / n) * Math.sqrt(p * (1 - p) / n + z * z / (4 * n * n));
    double stated = in.stream().mapToDouble(Said::probability).average().orElse(0);
    return new Bin(in.size(), stated, p, Math.max(0, middle - half), Math.min(1, middle + half));
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
    return bins().stream().mapToDouble(b -> b.n() * Math.abs(b.stated() - b.observed())).sum()
        / Math.max(1, all.size());
  }

  /** One line for each tenth of the scale. */
  String table() {
    StringBuilder lines =
        new StringBuilder("| stated | came true | 95 % | n |\n|---|---|---|---|\n");
    for (Bin b : bins()) {
      lines.append(
          String.format(
              Locale.ROOT,
              "| %.2f | %.2f | %.2f to %.2f | %d |%n",
              b.stated(),
              b.observed(),
              b.low(),
              b.high(),
              b.n()));
    }
    return lines.toString();
  }
}
