package corewright.station.web.did;

import corewright.bench.record.Finding;
import corewright.measures.Measurement;
import corewright.reports.chart.Digits;
import corewright.reports.chart.Numerals;
import corewright.reports.ledger.RunLists.Beside;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * What siblings read at the headline limit, on one line: a stroke each, this unit in copper, the
 * limit as a floor. Lengths are those of the drawing.
 *
 * @param rows the same in words, for those who cannot see a drawing and to go on from
 */
public record Strip(
    String words,
    List<Tick> siblings,
    double unit,
    double limit,
    String limitWords,
    List<Row> rows) {
  static final int WIDTH = 400;
  private static final double EDGE = 24;
  private static final double LETTERS = 90;

  /** One sibling's stroke. */
  public record Tick(double x, String tag) {}

  /** One sibling in words. */
  public record Row(String tag, String run, String reading) {}

  public String unitAnchor() {
    return anchor(unit);
  }

  public String limitAnchor() {
    return anchor(limit);
  }

  /** Whether there is room for both words; else the limit stands in the sentence below alone. */
  public boolean limitIsApart() {
    return Math.abs(unit - limit) > LETTERS;
  }

  private static String anchor(double x) {
    return x < WIDTH / 4.0 ? "start" : x > WIDTH * 0.75 ? "end" : "middle";
  }

  /** Empty where the unit has no reading there or no sibling has one. */
  static Optional<Strip> of(Optional<Finding> headline, List<Beside> siblings, Numerals numerals) {
    Optional<Measurement> own = headline.flatMap(Finding::measurement);
    if (own.isEmpty() || siblings.isEmpty()) {
      return Optional.empty();
    }
    double limit = headline.orElseThrow().limit().pass();
    DoubleStream ends = DoubleStream.of(own.get().value(), limit);
    double[] all =
        DoubleStream.concat(ends, siblings.stream().mapToDouble(Beside::value)).sorted().toArray();
    double low = all[0];
    double high = all[all.length - 1];
    double scale = (WIDTH - 2 * EDGE) / Math.max(high - low, 1e-12);
    Digits digits = Digits.of(headline.get().limit(), numerals);
    return Optional.of(
        new Strip(
            headline.get().quantity().title(),
            siblings.stream().map(s -> new Tick(at(s.value(), low, scale), s.tag())).toList(),
            at(own.get().value(), low, scale),
            at(limit, low, scale),
            digits.limit(headline.get().limit(), own),
            siblings.stream().map(s -> row(s, own.get(), digits)).toList()));
  }

  private static Row row(Beside s, Measurement like, Digits digits) {
    Measurement m = new Measurement(s.value(), s.u(), like.unit());
    return new Row(s.tag(), s.run(), digits.value(m) + " " + digits.u(m));
  }

  private static double at(double value, double low, double scale) {
    return Math.rint((EDGE + (value - low) * scale) * 10) / 10; // tenths will do
  }
}
