package corewright.profiles;

import corewright.files.Section;
import java.util.List;

/**
 * A profile that is being checked, with the family it names.
 *
 * @param file the whole file
 */
record ProfileDraft(Section file, Family family) {

  List<Section> steps() {
    return file.each("steps");
  }

  List<Section> holds() {
    return steps().stream().filter(s -> s.text("kind").equals("hold")).toList();
  }

  List<Section> judgedHolds() {
    return holds().stream().filter(s -> s.flag("judged", true)).toList();
  }

  List<Section> limits() {
    return file.each("limits");
  }

  boolean supplyDrops() {
    return file.flag("supplyDrops", false);
  }

  /** The lowest edge from which every feed is good, V. */
  double good_V() {
    return edge_V("good_V", family.zones().good_V());
  }

  /** The lowest edge from which every feed is tolerated, V. */
  double tolerated_V() {
    return edge_V("tolerated_V", family.zones().tolerated_V());
  }

  private double edge_V(String key, double otherwise) {
    return file.each("feeds").stream()
        .mapToDouble(f -> f.number(key, otherwise))
        .max()
        .orElse(otherwise);
  }
}
