package corewright.bench.run;

import java.util.List;

/**
 * What the record of the shop has against a run. The guards say it; each is a sentence, and an
 * empty list is a clear one.
 *
 * @param bench why the bench is locked for all but its reference units
 * @param reference whether the unit is one of them
 * @param unit why the unit may not be powered where it stands
 * @param operator why the operator may not run it
 * @param contacts why the fixture's contacts are not good enough
 * @param second why whoever is named as the second person does not count as one
 */
public record Clearance(
    List<String> bench,
    boolean reference,
    List<String> unit,
    List<String> operator,
    List<String> contacts,
    List<String> second) {
  /** Nothing stands against it. */
  public static final Clearance CLEAR = new Clearance(List.of(), false, List.of(), List.of());

  public Clearance {
    bench = List.copyOf(bench);
    unit = List.copyOf(unit);
    operator = List.copyOf(operator);
    contacts = List.copyOf(contacts);
    second = List.copyOf(second);
  }

  /** Nothing is said of contacts and second person. */
  public Clearance(
      List<String> bench, boolean reference, List<String> unit, List<String> operator) {
    this(bench, reference, unit, operator, List.of(), List.of());
  }
}
