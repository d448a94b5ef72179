package corewright.station.work;

import corewright.bench.judge.BenchChart;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.ReferenceUnit;
import corewright.measures.control.IndividualsChart;
import corewright.measures.control.IndividualsChart.Signal;
import corewright.reports.chart.FigurePictures;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Draws the charts of a bench: for each headline reading the values, and their moving ranges. */
public final class BenchCharts {
  private BenchCharts() {}

  /** Draws them all into a folder, made if missing; the files, in order. */
  public static List<Path> draw(ShiftCheck shift, BenchDescription bench, Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UncheckedIOException("the folder " + folder + " cannot be made", e);
    }
    List<Path> files = new ArrayList<>();
    for (ReferenceUnit unit : bench.referenceUnits()) {
      for (BenchChart chart : shift.charts(unit, bench)) {
        String name =
            (bench.id() + "-" + unit.tag() + "-" + chart.id()).replaceAll("[^0-9A-Za-z-]", "-");
        files.add(write(values(unit, chart), folder.resolve(name + ".svg")));
        files.add(write(ranges(unit, chart), folder.resolve(name + "-ranges.svg")));
      }
    }
    return files;
  }

  private static Path write(FigurePictures picture, Path file) {
    picture.write(file);
    return file;
  }

  private static FigurePictures values(ReferenceUnit unit, BenchChart chart) {
    Set<Integer> signals = chart.signals().stream().map(Signal::index).collect(Collectors.toSet());
    return FigurePictures.control(
        unit.tag() + ": " + chart.title(),
        chart.title() + symbol(chart),
        values(chart),
        chart
            .limits()
            .map(l -> List.of(l.lowerLimit(), l.centre(), l.upperLimit()))
            .orElse(List.of()),
        signals);
  }

  private static FigurePictures ranges(ReferenceUnit unit, BenchChart chart) {
    List<Double> values = values(chart);
    List<Double> ranges =
        IntStream.range(1, values.size())
            .mapToObj(i -> Math.abs(values.get(i) - values.get(i - 1)))
            .toList();
    double most =
        chart.limits().map(IndividualsChart::movingRangeLimit).orElse(Double.POSITIVE_INFINITY);
    return FigurePictures.control(
        unit.tag() + ": " + chart.title() + ", moving range",
        "from run to run" + symbol(chart),
        ranges,
        chart
            .limits()
            .map(l -> List.of(l.meanMovingRange(), l.movingRangeLimit()))
            .orElse(List.of()),
        IntStream.range(0, ranges.size())
            .filter(i -> ranges.get(i) > most)
            .boxed()
            .collect(Collectors.toSet()));
  }

  private static List<Double> values(BenchChart chart) {
    return chart.points().stream().map(p -> p.reading().value()).toList();
  }

  private static String symbol(BenchChart chart) {
    return chart.points().stream()
        .findFirst()
        .map(p -> ", " + p.reading().unit().symbol())
        .orElse("");
  }
}
