package corewright.reports.document;

import corewright.bench.life.ClaimClass;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import java.util.List;
import java.util.Optional;

/**
 * What a claim report is made from.
 *
 * @param now the unit on the visit on which it came back
 * @param number counted per unit from 1
 * @param symptom the customer's words when the claim was opened
 * @param covered until when it was covered, in words; empty: it left without a warranty
 * @param received how the unit came the first time
 * @param shipped how it left
 * @param returned how it came back
 * @param claimClass empty while the claim is open
 * @param outcome how the claim ended; empty while it is open
 * @param row of the table of claims that decided; empty while it is open
 * @param evidence photographs, seals, readings, each a line
 * @param reason why the outcome is not the usual one; often empty
 */
public record ClaimCase(
    Dossier now,
    int number,
    String symptom,
    String covered,
    Optional<RunRecord> received,
    RunRecord shipped,
    Optional<RunRecord> returned,
    Optional<ClaimClass> claimClass,
    Optional<ClaimClass.Outcome> outcome,
    String row,
    List<String> evidence,
    String reason) {

  public ClaimCase {
    evidence = List.copyOf(evidence);
  }
}
