package corewright.station.web.shop;

import corewright.measures.Figures;
import corewright.station.work.Returns;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * The share that is still in service, falling in steps, with its interval; beside it the same as a
 * table. Lengths are those of the drawing.
 *
 * @param share the steps as a path; {@code low} and {@code high} the ends of the interval
 */
public record Survival(
    String share, String low, String high, List<Mark> months, List<Mark> shares, List<Row> rows) {
  private static final double LEFT = 60;
  private static final double RIGHT = 640;
  private static final double TOP = 12;
  private static final double BOTTOM = 230;

  /** A figure on an axis. */
  public record Mark(double at, String words) {}

  /** One step. */
  public record Row(
      String months, long atRisk, long failed, String share, String interval, List<String> tags) {}

  static Survival of(List<Returns.Alive> steps) {
    double longest = Math.max(1, steps.stream().mapToDouble(Returns.Alive::months).max().orElse(1));
    List<Mark> months = new ArrayList<>();
    double step = Math.max(1, Math.ceil(longest / 12));
    for (double m = 0; m <= longest * 1.05; m += step) {
      months.add(new Mark(x(m, longest), Figures.number(m, 0)));
    }
    List<Mark> shares = new ArrayList<>();
    for (int percent = 0; percent <= 100; percent += 25) {
      shares.add(new Mark(y(percent / 100.0), percent + (percent == 100 ? " %" : "")));
    }
    return new Survival(
        path(steps, longest, Returns.Alive::share),
        path(steps, longest, s -> s.interval().low()),
        path(steps, longest, s -> s.interval().high()),
        months,
        shares,
        steps.stream().map(Survival::row).toList());
  }

  private static Row row(Returns.Alive s) {
    return new Row(
        Figures.number(s.months(), 1),
        s.atRisk(),
        s.failed(),
        Figures.number(100 * s.share(), 1) + " %",
        Figures.number(100 * s.interval().low(), 0)
            + " to "
            + Figures.number(100 * s.interval().high(), 0)
            + " %",
        s.tags());
  }

  private static String path(
      List<Returns.Alive> steps, double longest, ToDoubleFunction<Returns.Alive> share) {
    StringBuilder path = new StringBuilder(String.format(Locale.ROOT, "M%.1f %.1f", LEFT, y(1)));
    for (Returns.Alive s : steps) {
      path.append(
          String.format(
              Locale.ROOT, "H%.1fV%.1f", x(s.months(), longest), y(share.applyAsDouble(s))));
    }
    return path.append(String.format(Locale.ROOT, "H%.1f", RIGHT)).toString();
  }

  private static double x(double months, double longest) {
    return Math.rint(10 * (LEFT + (RIGHT - LEFT) * months / (longest * 1.05))) / 10;
  }

  private static double y(double share) {
    return Math.rint(10 * (BOTTOM - (BOTTOM - TOP) * share)) / 10;
  }
}
