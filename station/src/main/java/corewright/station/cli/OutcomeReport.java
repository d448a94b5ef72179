package corewright.station.cli;

import corewright.measures.Figures;
import corewright.station.work.Outcome;
import corewright.station.work.Told;
import java.io.PrintWriter;
import java.util.List;

/** How a command that took one unit to its decision reports it. */
final class OutcomeReport {
  private OutcomeReport() {}

  static void print(Outcome outcome, boolean json, PrintWriter out) {
    if (json) {
      out.println(RecordJson.text(RecordJson.outcome(outcome)));
    } else {
      OutcomeTable.of(List.of(outcome)).forEach(out::println);
      outcome.run().judgement().reasons().forEach(r -> out.println("  " + r));
      FindingLines.of(outcome.run().judgement()).forEach(out::println);
      Told.of(outcome.run(), Figures::withU).forEach(line -> out.println("  told: " + line));
      outcome.run().measured().ifPresent(m -> m.notes().forEach(note -> out.println("  " + note)));
      DecisionWords.test(outcome.decision()).forEach(out::println);
      out.println("Document    " + outcome.document());
      outcome.chart().ifPresent(chart -> out.println("Chart       " + chart));
    }
    out.flush();
  }
}
