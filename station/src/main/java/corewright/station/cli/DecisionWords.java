package corewright.station.cli;

import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import java.util.ArrayList;
import java.util.List;

/** A decision as lines for a terminal. */
final class DecisionWords {
  private DecisionWords() {}

  /** All of it: the unit, the row, why, the groups, and what the customer can be told. */
  static List<String> of(Core core, Decision decision) {
    List<String> lines = new ArrayList<>();
    lines.add(core.tag() + "  " + core.family() + "  serial " + core.serial());
    lines.addAll(lines(decision));
    if (!decision.reasons().isEmpty()) {
      lines.add("Why:");
      decision.reasons().forEach(reason -> lines.add("  " + reason));
    }
    return lines;
  }

  /** Where it goes, the open question, the groups, the customer's sentences. */
  static List<String> lines(Decision decision) {
    List<String> lines = new ArrayList<>();
    lines.add(
        decision.disposition()
            + (decision.destination().isEmpty() ? "" : " → " + decision.destination())
            + " (row "
            + decision.row()
            + ", table revision "
            + decision.tableRevision()
            + "): "
            + decision.sentence());
    if (!decision.question().isEmpty()) {
      lines.add(
          "  Open: "
              + decision.question()
              + " "
              + decision.owner()
              + decision.due().map(d -> ", until " + d).orElse(""));
    }
    lines.addAll(test(decision));
    return lines;
  }

  /** The groups that the readings point at, and what the customer can be told of the test. */
  static List<String> test(Decision decision) {
    List<String> lines = new ArrayList<>();
    decision.diagnosis().ifPresent(d -> lines.addAll(DiagnosisWords.lines(d)));
    if (!decision.finding().isEmpty()) {
      lines.add("To the customer: " + decision.finding());
    }
    return lines;
  }
}
