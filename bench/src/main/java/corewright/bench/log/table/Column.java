package corewright.bench.log.table;

/**
 * What one column was taken for.
 *
 * @param index counted from 0
 * @param name as it stands in the file; empty where it has none, and for what was dropped
 * @param scale printed value times this is the value in {@code unit}
 * @param unit of the values after scaling; empty where that does not matter
 * @param confidence 0 to 1
 * @param why how it was told, one clause
 * @param nearness of a supply: how near to the module's terminals it is measured, 3 at them, 0 far
 */
public record Column(
    int index,
    String name,
    Role role,
    double scale,
    String unit,
    double confidence,
    String why,
    char decimal,
    int nearness) {

  static Column of(ColumnFacts facts, Role role, double confidence, String why) {
    String name = role == Role.PERSONAL ? "" : facts.label().original();
    return new Column(facts.index(), name, role, 1, "", confidence, why, facts.decimal(), 0);
  }

  Column scaled(double newScale, String newUnit) {
    return new Column(index, name, role, newScale, newUnit, confidence, why, decimal, nearness);
  }

  Column near(int newNearness) {
    return new Column(index, name, role, scale, unit, confidence, why, decimal, newNearness);
  }

  /** For sentences: the name, or the number where it has none. */
  public String title() {
    return name.isBlank() ? "column " + (index + 1) : Inert.text(name);
  }
}
