package corewright.bench.zoo;

import corewright.bench.diagnose.Counting;
import corewright.fixtures.emulate.unit.LoadMode;
import corewright.fixtures.emulate.unit.UnitFault;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * One combination that a faulty unit of the zoo has.
 *
 * @param part which part of the scale of severity, 0 to {@link #PARTS} − 1
 * @param kelvin how much warmer than nominal the unit is
 */
record Cell(UnitFault fault, int part, double kelvin, LoadMode load) {
  static final int PARTS = 3;

  /** Every combination, in an order drawn from the seed; where there is more room, again. */
  static List<Cell> every(Random random, int count) {
    List<Cell> all = new ArrayList<>();
    for (UnitFault fault : faults()) {
      for (int part = 0; part < PARTS; part++) {
        for (double kelvin : new double[] {-5, 0, 5}) {
          for (LoadMode load : LoadMode.values()) {
            all.add(new Cell(fault, part, kelvin, load));
          }
        }
      }
    }
    List<Cell> cells = new ArrayList<>();
    while (cells.size() < count) {
      Collections.shuffle(all, random);
      cells.addAll(all);
    }
    return cells;
  }

  private static List<UnitFault> faults() {
    return Arrays.stream(UnitFault.values()).filter(f -> Counting.group(f).isPresent()).toList();
  }

  /** A severity within the part; {@code open}: or above it. */
  double severity(double share, boolean open) {
    double from = (double) part / PARTS;
    double to = open ? 1 : (part + 1.0) / PARTS;
    return from + share * (to - from);
  }
}
