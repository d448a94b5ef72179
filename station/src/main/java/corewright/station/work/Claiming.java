package corewright.station.work;

import corewright.bench.life.ClaimClass;
import corewright.bench.life.ClaimClass.Outcome;
import corewright.bench.life.ClaimFacts;
import corewright.bench.life.ClaimFacts.Cause;
import corewright.bench.life.ClaimFacts.Coverage;
import corewright.bench.life.ClaimFacts.Group;
import corewright.bench.life.ClaimFacts.Identity;
import corewright.bench.life.ClaimFacts.Returned;
import corewright.bench.life.ClaimFacts.Seal;
import corewright.bench.life.ClaimFacts.Term;
import corewright.bench.life.Claims;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.reports.document.ClaimCase;
import corewright.reports.ledger.ClaimDesk;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.ClaimDesk.Closing;
import corewright.reports.ledger.Ledger;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Classes a claim from what the record knows and what people found, and closes it. */
public final class Claiming {
  private final Ledger ledger;
  private final ZoneId zone;

  /**
   * For a shop.
   *
   * @param zone where it stands: a warranty ends with a day there
   */
  Claiming(Ledger ledger, ZoneId zone) {
    this.ledger = ledger;
    this.zone = zone;
  }

  /** What people found; the term and the test as returned come from the record. */
  public record Found(Identity identity, Seal seal, Cause cause, Coverage coverage, Group group) {}

  /**
   * How the claim shall end.
   *
   * @param outcome empty: the class's usual one
   * @param reason why it is another
   */
  public record Ending(List<String> evidence, Optional<Outcome> outcome, String reason) {}

  /**
   * Puts an open claim before the table.
   *
   * @throws Refused if no claim is open
   */
  public Claims.Row classify(String tag, Found found) {
    Claim open =
        ledger.claims().of(tag).stream()
            .filter(c -> c.closed().isEmpty())
            .findFirst()
            .orElseThrow(
                () ->
                    new Refused(
                        "No claim is open for " + tag, "Open one: 'claim TAG --symptom …'."));
    return Claims.decide(
        new ClaimFacts(
            found.identity(),
            term(open, zone),
            found.seal(),
            found.cause(),
            returned(ledger.dossier(tag), open),
            found.coverage(),
            found.group()));
  }

  /**
   * Closes the claim with the class that the table gives.
   *
   * @throws Refused if the table still has a question
   */
  public Claim close(String tag, Found found, Ending ending, String who) {
    Claims.Row row = classify(tag, found);
    ClaimClass claimClass =
        row.claim()
            .orElseThrow(
                () ->
                    new Refused(
                        "The claim for " + tag + " cannot be classed yet",
                        "Find out " + row.words() + " (row " + row.id() + ")."));
    return ledger
        .claims()
        .close(
            tag,
            new ClaimDesk.Closing(
                claimClass,
                row.id(),
                ending.outcome().orElse(claimClass.usual()),
                ending.evidence(),
                ending.reason()),
            who);
  }

  /**
   * What the report of a unit's latest claim is made from.
   *
   * @throws Refused if there is no claim, or no test from when the unit left
   */
  public ClaimCase latest(String tag) {
    Claim claim =
        ledger.claims().of(tag).stream()
            .reduce((a, b) -> b)
            .orElseThrow(
                () ->
                    new Refused(
                        "No claim was ever opened for " + tag,
                        "Open one: 'claim TAG --symptom …'."));
    Dossier now = ledger.dossier(tag);
    Dossier then = ledger.dossier(tag, claim.shippedVisit());
    RunRecord shipped =
        last(then, "ship")
            .orElseThrow(
                () ->
                    new Refused(
                        "The record has no test from when " + tag + " left",
                        "A claim report compares with it; write a letter instead."));
    Optional<Closing> closing = ledger.claims().closing(claim);
    Optional<RunRecord> returned =
        now.visit() == claim.shippedVisit()
            ? Optional.empty()
            : now.runs().stream().filter(run -> !run.purpose().equals("ship")).reduce((a, b) -> b);
    return new ClaimCase(
        now,
        claim.ordinal(),
        claim.symptom(),
        claim.warrantyUntil(),
        last(then, "arrival"),
        shipped,
        returned,
        closing.map(Closing::claimClass),
        closing.map(Closing::outcome),
        closing.map(Closing::row).orElse(""),
        closing.map(Closing::evidence).orElse(List.of()),
        closing.map(Closing::reason).orElse(""));
  }

  private static Optional<RunRecord> last(Dossier dossier, String purpose) {
    return dossier.runs().stream().filter(run -> run.purpose().equals(purpose)).reduce((a, b) -> b);
  }

  static Term term(Claim claim, ZoneId zone) {
    if (claim.warrantyUntil().isEmpty()) {
      return Term.OUT;
    }
    LocalDate last = LocalDate.parse(claim.warrantyUntil());
    return WallClock.day(claim.opened(), zone).isAfter(last) ? Term.OUT : Term.IN;
  }

  /** The last run since it came back that says anything. */
  private static Returned returned(Dossier dossier, Claim claim) {
    if (dossier.visit() == claim.shippedVisit()) {
      return Returned.UNKNOWN;
    }
    return dossier.runs().stream()
        .filter(run -> !run.purpose().equals("ship"))
        .map(RunRecord::judgement)
        .flatMap(j -> j.verdict().stream())
        .filter(v -> v != Verdict.VOID && v != Verdict.INCOMPLETE)
        .reduce((a, b) -> b)
        .map(v -> v == Verdict.PASS ? Returned.PASS : Returned.FAIL)
        .orElse(Returned.UNKNOWN);
  }
}
