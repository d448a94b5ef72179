package corewright.station.cli;

import corewright.bench.record.Core;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Hypothesis;
import corewright.bench.record.Identification;
import corewright.measures.Chance;
import corewright.profiles.Cue;
import corewright.profiles.Variant;
import corewright.station.work.Looking.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Which build a unit is, in words. */
final class IdentifyText {
  /** A past that is less probable than this is not worth a line. */
  private IdentifyText() {}

  /** One line: where the question stands. */
  static String line(Identification id) {
    return "So far "
        + id.variant()
        + " with "
        + Chance.words(id.posterior())
        + then(id, ", ")
        + ".";
  }

  static List<String> of(Standing standing, WallTime time) {
    List<String> lines = new ArrayList<>();
    Core core = standing.dossier().core();
    Identification id = standing.identification();
    lines.add(core.tag() + "  " + core.family() + "  serial " + core.serial());
    lines.add(band(standing, id));
    standing.family().variant(id.variant()).ifPresent(v -> lines.add(fate(v)));
    if (!id.conflicts().isEmpty()) {
      lines.add("What does not fit, the worst first:");
      id.conflicts().forEach(c -> lines.add("  " + c));
    }
    lines.addAll(history(id));
    lines.addAll(seen(standing, time));
    standing.next().ifPresent(cue -> lines.add("Look at next: " + cue.question()));
    return lines;
  }

  /** What may have happened to the unit; nothing where it is most probably as it was made. */
  static List<String> history(Identification id) {
    return id.history().stream()
        .filter(Hypothesis::worthSaying)
        .flatMap(h -> Stream.of(h.sentence(), "  " + h.handling()))
        .toList();
  }

  private static String then(Identification id, String before) {
    return id.runnerUp().isEmpty() || !Chance.isWorthTelling(id.runnerUpPosterior())
        ? ""
        : before + "then " + id.runnerUp() + " with " + Chance.words(id.runnerUpPosterior());
  }

  private static String band(Standing standing, Identification id) {
    String title = standing.family().variant(id.variant()).map(Variant::title).orElse("");
    return switch (id.band()) {
          case IDENTIFIED -> "It is " + id.variant() + ", " + title;
          case PROBABLE -> "It is probably " + id.variant() + ", " + title;
          case UNCERTAIN -> "It is not known which build it is; nearest is " + id.variant();
        }
        + ", probability "
        + Chance.words(id.posterior())
        + then(id, "; ")
        + " (key revision "
        + id.keyRevision()
        + ").";
  }

  private static String fate(Variant variant) {
    String can = IdentifyTalk.words(variant.serviceable()).replaceFirst("which", "That build");
    return can
        + ": "
        + variant.why()
        + (variant.kit().isEmpty() ? "." : ". Its kit is " + variant.kit() + ".");
  }

  private static List<String> seen(Standing standing, WallTime time) {
    List<String> lines = new ArrayList<>();
    List<String> open = new ArrayList<>();
    for (Cue cue : standing.family().cues()) {
      Optional<CueAnswer> answer =
          standing.dossier().answers().stream().filter(a -> a.cue().equals(cue.id())).findFirst();
      if (answer.isEmpty()) {
        open.add(cue.id());
      } else {
        lines.add(
            String.format(
                Locale.ROOT,
                "  %-12s %s  (%s, %s%s)",
                cue.id(),
                answer.get().words(),
                answer.get().who(),
                time.words(answer.get().when()),
                answer.get().photo().isEmpty()
                    ? ""
                    : ", photo " + answer.get().photo().substring(0, 12)));
      }
    }
    if (!lines.isEmpty()) {
      lines.add(0, "Seen:");
    }
    if (!open.isEmpty()) {
      lines.add("Not looked at: " + String.join(", ", open) + ".");
    }
    return lines;
  }
}
