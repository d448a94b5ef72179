package corewright.bench.triage;

import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.triage.Build.Identity;
import corewright.bench.triage.Custody.Lock;
import corewright.bench.triage.Custody.Safety;
import corewright.bench.triage.Proof.Evidence;
import corewright.bench.triage.Terms.Approval;
import corewright.bench.triage.Terms.Claim;
import corewright.bench.triage.Terms.Mode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/**
 * A person decides otherwise than the table: never silently, and never past what safety, law or the
 * owner of the unit forbid.
 */
public final class Overruling {
  private static final Set<String> DESTINATIONS =
      Set.of("queue", "exchange", "stock", "harvest", "scrap", "customer");
  private static final Set<String> TAKEN = Set.of("stock", "harvest", "scrap");

  private Overruling() {}

  /** Where a person wants it to go. */
  private record Wanted(Disposition to, String destination) {}

  /** What no word of anybody's allows. */
  private record Bar(String why, BiPredicate<Decision, Wanted> when) {}

  private static final List<Bar> BARS =
      List.of(
          new Bar(
              "a unit that is CHARGED leaves by nobody's word", (d, w) -> saw(d, Safety.CHARGED)),
          new Bar("a unit that is WET leaves by nobody's word", (d, w) -> saw(d, Safety.WET)),
          new Bar(
              "a unit that is DISPUTED leaves by nobody's word", (d, w) -> saw(d, Lock.DISPUTED)),
          new Bar(
              "a unit of an UNCERTAIN build is not opened",
              (d, w) -> saw(d, Identity.UNCERTAIN) && w.to() == Disposition.REBUILD),
          new Bar(
              "a VOID test says nothing about the unit, and nothing goes to stock on it",
              (d, w) ->
                  (saw(d, Evidence.VOID_INPUT) || saw(d, Evidence.VOID_BENCH))
                      && w.destination().equals("stock")),
          new Bar(
              "a customer's unit is neither rebuilt nor replaced without their approval",
              (d, w) -> theirs(d) && !saw(d, Approval.APPROVED) && w.to() != Disposition.RETURN),
          new Bar(
              "a customer's unit is not taken for stock, parts or scrap",
              (d, w) -> theirs(d) && TAKEN.contains(w.destination())));

  /**
   * The decision with another end. Its row keeps the number of the row that it overrules.
   *
   * @param to not PENDING: what is open needs its own question, owner and day
   * @param destination {@code queue}, {@code exchange}, {@code stock}, {@code harvest}, {@code
   *     scrap} or {@code customer}
   * @param who who decides
   * @param why the reason, a sentence
   * @throws IllegalArgumentException if nobody or nothing is named, or it is forbidden
   */
  public static Decision of(
      Decision decided, Disposition to, String destination, String who, String why) {
    if (who.isBlank() || why.isBlank()) {
      throw new IllegalArgumentException(
          "overruling " + decided.row() + " needs a name and a reason. Give both.");
    }
    if (to == Disposition.PENDING || !DESTINATIONS.contains(destination)) {
      throw new IllegalArgumentException(
          "overruling "
              + decided.row()
              + " needs a disposition and where the unit goes: one of "
              + DESTINATIONS.stream().sorted().toList()
              + ".");
    }
    Wanted wanted = new Wanted(to, destination);
    BARS.stream()
        .filter(bar -> bar.when().test(decided, wanted))
        .findFirst()
        .ifPresent(
            bar -> {
              throw new IllegalArgumentException(bar.why() + ". Clear that first");
            });
    return new Decision(
        decided.row() + " overruled",
        decided.tableRevision(),
        to,
        destination,
        decided.sentence(),
        Stream.concat(Stream.of(words(decided, who, why)), decided.reasons().stream()).toList(),
        decided.finding(),
        decided.diagnosis(),
        "",
        "",
        Optional.empty(),
        decided.saw());
  }

  private static String words(Decision decided, String who, String why) {
    return who.strip()
        + " decided otherwise than "
        + decided.row()
        + ", which says "
        + decided.disposition()
        + ": "
        + why.strip();
  }

  private static boolean saw(Decision decided, Enum<?> value) {
    return value.name().equals(decided.saw().get(value.getDeclaringClass().getSimpleName()));
  }

  /** Not the shop's own; see {@link Terms#ours}. */
  private static boolean theirs(Decision d) {
    return !saw(d, Claim.NONE) || !(saw(d, Mode.EXCHANGE) || saw(d, Mode.STOCK));
  }
}
