package corewright.reports.chart;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.DoubleStream;

/** How far the lanes reach and how they are divided. */
final class Scales {
  private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

  private Scales() {}

  /**
   * The output lane: whole volts, with V₀ and the floor in view; zero only if the output fell
   * there.
   */
  static Span output(Scene scene) {
    DoubleStream.Builder seen = DoubleStream.builder();
    seen.add(scene.output().lowest()).add(scene.output().highest());
    scene.others().forEach(t -> seen.add(t.lowest()).add(t.highest()));
    scene.nominal_V().ifPresent(seen::add);
    scene.headline().map(Scene.Headline::limit_V).ifPresent(seen::add);
    return padded(seen.build(), 1);
  }

  /** The input lane: every zone in view. */
  static Span input(Scene scene) {
    DoubleStream.Builder seen = DoubleStream.builder();
    scene.inputs().forEach(t -> seen.add(t.lowest()).add(t.highest()));
    scene.zones().ifPresent(z -> seen.add(z.tolerated_V() - 1).add(z.good_V() + 2));
    return padded(seen.build(), 1);
  }

  static Span load(Trace load) {
    double top = Double.isNaN(load.highest()) ? 1 : Math.max(0.1, load.highest());
    return new Span(Math.min(0, load.lowest()) - top * 0.02, top * 1.08);
  }

  /** Whole steps of {@code whole} about all values, some air at both ends. */
  static Span padded(DoubleStream values, double whole) {
    double[] finite = values.filter(Double::isFinite).sorted().toArray();
    if (finite.length == 0) {
      return new Span(0, whole);
    }
    double from = Math.floor(finite[0] / whole - 0.1) * whole;
    double to = Math.ceil(finite[finite.length - 1] / whole + 0.1) * whole;
    return new Span(from, Math.max(to, from + 4 * whole));
  }

  /** Divisions of the output lane: one per volt, as long as they stay apart. */
  static List<RuleAxis.Mark> outputMarks(Span span, double height, Numerals numerals) {
    double every = atLeast(5.5 * span.length() / height, 1);
    return RuleAxis.marks(span, every, multiple(every, 19 * span.length() / height), "V", numerals);
  }

  /** Divisions of the time axis. */
  static List<RuleAxis.Mark> timeMarks(Span span, double width, Numerals numerals) {
    double figure = atLeast(60 * span.length() / width, 0);
    double every = figure / (Math.round(figure * 10) % 5 == 0 ? 5 : 4);
    return RuleAxis.marks(span, every, figure, "s", numerals);
  }

  private static double multiple(double every, double least) {
    return atLeast(Math.max(least, every), every);
  }

  /**
   * The smallest round step that is at least {@code least} and a multiple of {@code of}, if not 0.
   */
  private static double atLeast(double least, double of) {
    for (double step : STEPS) {
      double times = of == 0 ? 0 : step / of;
      if (step >= least - 1e-9
          && Math.abs(times - Math.rint(times)) < 1e-9
          && (of == 0 || times >= 1)) {
        return step;
      }
    }
    return STEPS[STEPS.length - 1];
  }

  /** A figure of a scale: no more decimals than it needs. */
  static String plain(double value) {
    String text =
        BigDecimal.valueOf(value)
            .setScale(3, java.math.RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    return text.replace('-', '−');
  }
}
