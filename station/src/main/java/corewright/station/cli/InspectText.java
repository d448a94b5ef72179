package corewright.station.cli;

import corewright.bench.inspect.Inspection;
import corewright.bench.inspect.Inspection.Line;
import corewright.bench.inspect.MassCheck;
import corewright.bench.inspect.Symptoms;
import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.profiles.Grade;
import corewright.station.work.Inspecting.Result;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** In which condition a unit came, in words. */
final class InspectText {
  private InspectText() {}

  static List<String> of(Result result) {
    List<String> lines = new ArrayList<>();
    Core core = result.dossier().core();
    Inspection seen = result.inspection();
    lines.add(core.tag() + "  " + core.family() + "  serial " + core.serial());
    result
        .symptoms()
        .codes()
        .forEach(c -> lines.add("complaint      " + c.text() + " (" + where(c.where()) + ")"));
    result.reported().forEach(s -> lines.add("complaint      " + s));
    String group = "";
    for (Line line : seen.lines()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "%-14s %s",
              line.item().group().equals(group) ? "" : line.item().group(),
              line.item().id() + ": " + line.answer()));
      group = line.item().group();
      line.pins().forEach(p -> lines.add(" ".repeat(15) + "pin " + pin(p) + ": " + p.answer()));
      if (line.isRemarkable()) {
        lines.add(" ".repeat(17) + line.item().meaning());
      }
    }
    seen.mass().map(MassCheck::words).ifPresent(w -> lines.add("mass           " + w));
    lines.add(
        seen.gradeWords()
            + seen.grade()
                .map(g -> " It usually brings " + credit(g) + " of the deposit.")
                .orElse(""));
    if (!seen.blocking().isEmpty()) {
      lines.add("Nothing may be energised: " + String.join(", ", seen.blocking()) + ".");
    }
    if (!seen.open().isEmpty()) {
      lines.add("Not answered: " + String.join("; ", seen.open()) + ".");
    }
    result.other().ifPresent(g -> lines.add("The record has grade " + g + ", given by a person."));
    return lines;
  }

  /** What matters of it beside everything else that is known: complaint, grade, what forbids. */
  static List<String> brief(Result result) {
    List<String> lines = new ArrayList<>(result.reported());
    Inspection seen = result.inspection();
    if (seen.grade().isPresent()) {
      lines.add(seen.gradeWords());
    }
    if (!seen.blocking().isEmpty()) {
      lines.add("Nothing may be energised: " + String.join(", ", seen.blocking()) + ".");
    }
    return lines;
  }

  private static String where(String place) {
    return Symptoms.PLACES.contains(place) ? place : "output " + place;
  }

  private static String pin(CueAnswer answer) {
    return answer.cue().substring(answer.cue().indexOf('/') + 1);
  }

  private static String credit(Grade grade) {
    return grade.least_percent() == grade.most_percent()
        ? grade.most_percent() + " %"
        : grade.least_percent() + " to " + grade.most_percent() + " %";
  }
}
