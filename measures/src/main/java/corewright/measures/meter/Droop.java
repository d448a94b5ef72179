package corewright.measures.meter;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import java.util.List;
import java.util.Optional;

/**
 * Steady output at no load less steady output under load. The channel's offset cancels, and its
 * gain acts on the difference alone, since both are the same in all holds of a run.
 *
 * @param index of the hold that is taken as no load
 * @param flag what to know about it; empty where it is unloaded
 */
record Droop(int index, Level reference, Optional<String> flag) {
  /** A hold is unloaded below this part of the largest load. */
  private static final double UNLOADED_PART = 0.01;

  private static final double PERCENT = 100;

  private static final String BY_DEFINITION = "0 by definition: droop refers to this hold";

  /**
   * The first unloaded hold, or the first that could be read.
   *
   * @param outputs level of the output in each hold; empty where it could not be read
   * @param loads the same of the load
   */
  static Optional<Droop> against(List<Optional<Level>> outputs, List<Optional<Level>> loads) {
    double largest =
        loads.stream()
            .flatMap(Optional::stream)
            .mapToDouble(l -> Math.abs(l.mean()))
            .max()
            .orElse(0);
    Optional<Droop> first = Optional.empty();
    for (int i = 0; i < outputs.size(); i++) {
      if (outputs.get(i).isEmpty()) {
        continue;
      }
      Level output = outputs.get(i).get();
      boolean unloaded =
          loads.get(i).filter(l -> Math.abs(l.mean()) <= UNLOADED_PART * largest).isPresent();
      if (unloaded) {
        return Optional.of(new Droop(i, output, Optional.empty()));
      }
      if (first.isEmpty()) {
        first =
            Optional.of(
                new Droop(
                    i,
                    output,
                    Optional.of("no hold is unloaded: this is against hold " + (i + 1))));
      }
    }
    return first;
  }

  void read(int hold, Channel output, Level level, Readings into) {
    boolean itself = hold == index;
    List<String> flags = itself ? List.of(BY_DEFINITION) : flag.map(List::of).orElse(List.of());
    double droop = reference.mean() - level.mean();
    double u = itself ? 0 : Root.of(reference.uMean(), level.uMean());
    into.put(Quantity.DROOP, output.difference(droop, u), flags);
    if (level.mean() == 0) {
      into.none("the output is 0 V, and a percentage of it says nothing", Quantity.LOAD_REGULATION);
      return;
    }
    // r = reference/level − 1: gain cancels; an offset o changes it by −r·o/level.
    double r = droop / level.mean();
    double uOfR =
        itself
            ? 0
            : Root.of(
                reference.uMean() / level.mean(),
                reference.mean() * level.uMean() / (level.mean() * level.mean()),
                r * output.doubt().offset() / level.mean());
    into.put(
        Quantity.LOAD_REGULATION,
        new Measurement(PERCENT * r, PERCENT * uOfR, Unit.PERCENT),
        flags);
  }
}
