package corewright.measures.meter;

import corewright.measures.Reading;
import corewright.measures.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Output resistance: minus the least-squares slope of output over load, rising steps alone. */
final class OutputSlope {
  private OutputSlope() {}

  private record Point(Level output, Level load) {}

  /**
   * Over the longest run of holds whose load rises from each to the next, the first of the longest.
   * After a step down the output may take seconds to come back, with nothing but a bleeder to pull
   * it: such holds would spoil the slope.
   */
  static Reading read(
      List<Optional<Level>> outputs,
      List<Optional<Level>> loads,
      Channel output,
      Optional<Channel> load) {
    List<Point> rising = longestRise(outputs, loads);
    if (rising.size() < 2 || load.isEmpty()) {
      return Reading.none("the load rises from no hold to the next");
    }
    double meanLoad = rising.stream().mapToDouble(p -> p.load().mean()).average().orElseThrow();
    double spread = rising.stream().mapToDouble(p -> Math.pow(p.load().mean() - meanLoad, 2)).sum();
    double slope = 0;
    for (Point p : rising) {
      slope += (p.load().mean() - meanLoad) / spread * p.output().mean();
    }
    double squares = 0;
    for (Point p : rising) {
      double weight = (p.load().mean() - meanLoad) / spread;
      squares += Math.pow(weight * p.output().uMean(), 2);
      squares += Math.pow(weight * slope * p.load().uMean(), 2);
    }
    double u =
        Root.of(
            Math.sqrt(squares),
            slope * output.doubt().gain_rel(),
            slope * load.get().doubt().gain_rel());
    return Reading.of(-slope, u, Unit.OHM);
  }

  private static List<Point> longestRise(
      List<Optional<Level>> outputs, List<Optional<Level>> loads) {
    List<Point> longest = List.of();
    List<Point> run = new ArrayList<>();
    for (int i = 0; i < outputs.size(); i++) {
      if (outputs.get(i).isEmpty() || loads.get(i).isEmpty()) {
        run = new ArrayList<>();
        continue;
      }
      Level load = loads.get(i).get();
      if (!run.isEmpty() && run.get(run.size() - 1).load().mean() >= load.mean()) {
        run = new ArrayList<>();
      }
      run.add(new Point(outputs.get(i).get(), load));
      if (run.size() > longest.size()) {
        longest = List.copyOf(run);
      }
    }
    return longest;
  }
}
