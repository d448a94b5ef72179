package corewright.bench.run;

import corewright.bench.record.Identification;
import java.util.List;
import java.util.Optional;

/**
 * What people have answered for before a run. The guards ask for it; a run never fills it in.
 *
 * @param cautions the cautions were shown, and the operator confirmed them
 * @param secondPerson who else is there; demanded above 60 V DC
 * @param identity how sure the identification is; empty where the family was named by hand
 * @param blocking answers of the checklist with which nothing may be energised, as {@code moisture:
 *     wet}
 * @param clearance what the record of the shop has against the run
 */
public record Confirmations(
    boolean cautions,
    Optional<String> secondPerson,
    Optional<Identification.Band> identity,
    List<String> blocking,
    Clearance clearance) {

  public Confirmations {
    blocking = List.copyOf(blocking);
  }

  /** Where no record is kept, nothing in it stands against the run. */
  public Confirmations(
      boolean cautions,
      Optional<String> secondPerson,
      Optional<Identification.Band> identity,
      List<String> blocking) {
    this(cautions, secondPerson, identity, blocking, Clearance.CLEAR);
  }
}
