package corewright.bench.log;

import java.util.List;

/** The three families of the scenario, as far as a log asks. */
final class MadeFamilies {
  static final LogFamily SD48 = new LogFamily("sd48", 48, 12.5, 10, 9);
  static final LogFamily IE110 = new LogFamily("ie110", 110, 25, 20, 18);
  static final LogFamily PV65 = new LogFamily("pv65", 65, 12.5, 10, 9);
  static final List<LogFamily> ALL = List.of(SD48, IE110, PV65);

  private MadeFamilies() {}
}
