package corewright.measures.meter;

import corewright.measures.Reading;
import corewright.measures.Unit;
import java.util.List;
import java.util.Optional;

/** The load at which the steady output leaves regulation: between one hold and the next. */
final class RegulationLost {
  private RegulationLost() {}

  static Reading read(
      List<Optional<Level>> outputs, List<Optional<Level>> loads, double nominal_V) {
    double holds_A = Double.NEGATIVE_INFINITY;
    double lost_A = Double.POSITIVE_INFINITY;
    double lost_V = (1 - Regulation.LOST_PART) * nominal_V;
    for (int i = 0; i < outputs.size(); i++) {
      if (outputs.get(i).isPresent() && loads.get(i).isPresent()) {
        double load_A = loads.get(i).get().mean();
        if (outputs.get(i).get().mean() < lost_V) {
          lost_A = Math.min(lost_A, load_A);
        } else {
          holds_A = Math.max(holds_A, load_A);
        }
      }
    }
    if (lost_A == Double.POSITIVE_INFINITY) {
      return Reading.none("the output is in regulation at every load that was drawn");
    }
    if (holds_A == Double.NEGATIVE_INFINITY) {
      return Reading.none("the output is out of regulation at every load that was drawn");
    }
    if (holds_A >= lost_A) {
      return Reading.none("the output is in regulation at a larger load than it was lost at");
    }
    // Anywhere between the two: rectangular (JCGM 100, 4.3.7).
    return Reading.of((holds_A + lost_A) / 2, (lost_A - holds_A) / Math.sqrt(12), Unit.AMPERE);
  }
}
