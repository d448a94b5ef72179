package corewright.station.cli;

import corewright.bench.record.Core;
import corewright.bench.record.Dossier;
import corewright.bench.record.Identification;
import corewright.bench.record.RunRecord;
import corewright.measures.Chance;
import corewright.reports.ledger.Amendment;
import corewright.reports.ledger.Found;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is known of a unit, as lines for a terminal. */
final class DossierWords {
  private DossierWords() {}

  /** One unit of several that were found. */
  static String line(Found found) {
    return found.tag()
        + "  "
        + found.family()
        + "  serial "
        + found.serial()
        + "  ("
        + found.why()
        + ")";
  }

  static List<String> of(Dossier dossier, List<Amendment> amendments, WallTime time) {
    List<String> lines = new ArrayList<>();
    Core core = dossier.core();
    lines.add(
        core.tag()
            + "  "
            + core.family()
            + "  serial "
            + core.serial()
            + "  label "
            + core.label());
    lines.add(
        "Received "
            + time.words(core.received())
            + " by "
            + core.receivedBy()
            + ", visit "
            + dossier.visit());
    if (!core.complaint().isEmpty()) {
      lines.add("Complaint: " + core.complaint());
    }
    dossier.identification().ifPresent(i -> lines.addAll(identification(i)));
    dossier.runs().forEach(run -> lines.addAll(run(run, amendments, time)));
    dossier.rebuild().forEach(done -> lines.add("Rebuilt: " + done));
    dossier.decision().ifPresent(d -> lines.addAll(DecisionWords.lines(d)));
    return lines;
  }

  private static List<String> identification(Identification id) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Build "
            + id.variant()
            + ", probability "
            + Chance.words(id.posterior())
            + " ("
            + id.band().name().toLowerCase(Locale.ROOT)
            + ")");
    id.conflicts().forEach(c -> lines.add("  against it: " + c));
    IdentifyText.history(id).forEach(h -> lines.add("  " + h));
    return lines;
  }

  private static List<String> run(RunRecord run, List<Amendment> amendments, WallTime time) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Run "
            + run.number()
            + ", "
            + time.words(run.started())
            + ", "
            + run.purpose()
            + ", "
            + run.source().words()
            + ": "
            + run.judgement().verdict().map(Enum::name).orElse("no verdict"));
    run.judgement().reasons().forEach(r -> lines.add("  " + r));
    if (!run.end().saw().isEmpty() && run.judgement().reasons().isEmpty()) {
      lines.add("  " + run.end().saw());
    }
    amendments.stream()
        .filter(a -> a.run().equals(run.id()))
        .forEach(
            a -> lines.add("  Amended by " + a.who() + ": " + a.text() + " (" + a.reason() + ")"));
    run.measured().ifPresent(m -> m.notes().forEach(note -> lines.add("  " + note)));
    return lines;
  }
}
