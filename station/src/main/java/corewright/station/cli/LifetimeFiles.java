package corewright.station.cli;

import corewright.reports.chart.FigurePictures;
import corewright.reports.chart.FigurePictures.Point;
import corewright.station.work.Returns;
import corewright.station.work.ShopFigures;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** What came back and when, as files. */
record LifetimeFiles(FigureFolder to) {

  void write(ShopFigures f) throws IOException {
    months(f);
    lifetimes(f);
  }

  private void months(ShopFigures f) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    for (Returns.Month m : f.returns()) {
      List<String> back = m.returned().values().stream().flatMap(List::stream).toList();
      m.returned()
          .forEach(
              (month, tags) ->
                  rows.add(
                      List.of(
                          m.month(),
                          String.valueOf(m.shipped()),
                          String.valueOf(m.inService()),
                          String.valueOf(month),
                          String.valueOf(tags.size()),
                          String.join(" ", tags))));
      if (back.isEmpty()) {
        rows.add(
            List.of(
                m.month(),
                String.valueOf(m.shipped()),
                String.valueOf(m.inService()),
                "",
                "0",
                ""));
      }
    }
    to.csv(
        "returns-by-ship-month",
        List.of("ship_month", "shipped", "still_in_service", "month_in_service", "back", "tags"),
        rows);
  }

  private void lifetimes(ShopFigures f) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    List<Point> steps = new ArrayList<>();
    List<Point> line = new ArrayList<>();
    steps.add(new Point(0, 100, 100, 100));
    for (Returns.Alive s : f.survival()) {
      steps.add(
          new Point(
              s.months(), 100 * s.share(), 100 * s.interval().low(), 100 * s.interval().high()));
      rows.add(
          List.of(
              String.valueOf(s.months()),
              String.valueOf(s.atRisk()),
              String.valueOf(s.failed()),
              String.valueOf(s.share()),
              String.valueOf(s.interval().low()),
              String.valueOf(s.interval().high()),
              String.join(" ", s.tags())));
    }
    to.csv(
        "lifetimes",
        List.of("months", "at_risk", "failed", "in_service", "low95", "high95", "tags"),
        rows);
    if (f.weibull().shape().isPresent() && f.weibull().scale_months().isPresent()) {
      double longest = steps.get(steps.size() - 1).x() * 1.1;
      for (int i = 0; i <= 100; i++) {
        double month = longest * i / 100;
        double left =
            100
                * Math.exp(
                    -Math.pow(month / f.weibull().scale_months().get(), f.weibull().shape().get()));
        line.add(new Point(month, left, left, left));
      }
    }
    to.picture(
        "lifetimes",
        FigurePictures.fall(
            line.isEmpty()
                ? "Still in service (Kaplan and Meier, 95 %); no Weibull line"
                : "Still in service (Kaplan and Meier, 95 %; dashed: Weibull)",
            "months in service",
            "share, %",
            steps,
            line));
  }
}
