package corewright.bench.triage;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A person decides otherwise than the table: never silently, and never past custody. */
public final class Overruling {
  /** A unit in one of these states leaves for no reason and by nobody's word. */
  private static final Set<String> NEVER_LEAVES = Set.of("CHARGED", "WET", "DISPUTED");

  private Overruling() {}

  /**
   * The decision with another end. Its row keeps the number of the row that it overrules.
   *
   * @param to not PENDING: what is open needs its own question, owner and day
   * @param who who decides
   * @param why the reason, a sentence
   * @throws IllegalArgumentException if nobody or nothing is named, or the unit may not leave
   */
  public static Decision of(
      Decision decided, Disposition to, String destination, String who, String why) {
    if (who.isBlank() || why.isBlank()) {
      throw new IllegalArgumentException(
          "overruling " + decided.row() + " needs a name and a reason. Give both.");
    }
    if (to == Disposition.PENDING || destination.isBlank()) {
      throw new IllegalArgumentException(
          "overruling " + decided.row() + " needs a disposition and where the unit goes.");
    }
    decided.saw().values().stream()
        .filter(NEVER_LEAVES::contains)
        .findFirst()
        .ifPresent(
            state -> {
              throw new IllegalArgumentException(
                  "a unit that is " + state + " leaves by nobody's word. Clear that first.");
            });
    return new Decision(
        decided.row() + " overruled",
        decided.tableRevision(),
        to,
        destination,
        decided.sentence(),
        Stream.concat(
                Stream.of(
                    who.strip()
                        + " decided otherwise than "
                        + decided.row()
                        + ", which says "
                        + decided.disposition()
                        + ": "
                        + why.strip()),
                decided.reasons().stream())
            .toList(),
        "",
        "",
        Optional.empty(),
        decided.saw());
  }
}
