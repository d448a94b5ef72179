package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** What an identification key and a checklist must keep beyond their schema. */
final class KeyRules {
  private KeyRules() {}

  static void names(Section family, Consumer<Mistake> found) {
    Rules.uniqueIds(family.each("variants"), "variants", found);
    Rules.uniqueIds(family.each("cues"), "cues", found);
    Rules.uniqueIds(family.each("checklist"), "lines", found);
  }

  static void priors(Section family, Consumer<Mistake> found) {
    double sum = family.each("variants").stream().mapToDouble(v -> v.number("prior")).sum();
    if (Math.abs(sum - 1) > 0.001) {
      found.accept(
          family.mistake(
              "variants",
              "the priors of the variants sum to " + shown(Math.round(sum * 1e6) / 1e6),
              "Make them sum to 1"));
    }
  }

  /** Each expected answer is one of its cue's. */
  static void expectations(Section family, Consumer<Mistake> found) {
    List<Section> cues = family.each("cues");
    List<String> known = cues.stream().map(c -> c.text("id")).toList();
    for (Section variant : family.each("variants")) {
      Section expected = variant.at("expected");
      for (String cue : expected.keys()) {
        Optional<Section> asked = cues.stream().filter(c -> c.text("id").equals(cue)).findFirst();
        if (asked.isEmpty()) {
          found.accept(
              expected.mistake(cue, "there is no cue '" + cue + "'", Rules.meant(cue, known)));
        } else {
          listed(expected, cue, asked.get().texts("answers"), found);
        }
      }
    }
  }

  /** A build that can be rebuilt has a kit, one that cannot has none. */
  static void kits(Section family, Consumer<Mistake> found) {
    for (Section variant : family.each("variants")) {
      boolean kit = !variant.text("kit").isEmpty();
      String serviceable = variant.text("serviceable");
      if (serviceable.equals("no") && kit) {
        found.accept(
            variant.mistake(
                "kit",
                "a build that cannot be rebuilt has no kit",
                "Write \"\", or another serviceable"));
      } else if (serviceable.equals("yes") && !kit) {
        found.accept(
            variant.mistake(
                "kit", "a build that can be rebuilt needs a kit", "Name its parts kit"));
      }
    }
  }

  static void scales(Section family, Consumer<Mistake> found) {
    for (Section cue : family.each("cues")) {
      double reached = Double.NEGATIVE_INFINITY;
      for (Section band : cue.at("scale").each("bands")) {
        String answer = band.text("answer");
        if (!cue.texts("answers").contains(answer)) {
          found.accept(
              band.mistake(
                  "answer",
                  "'" + answer + "' is no answer of this cue",
                  Rules.meant(answer, cue.texts("answers"))));
        }
        if (band.number("to") <= band.number("from")) {
          found.accept(
              band.mistake("to", "the band ends before it begins", "Write more than 'from'"));
        }
        if (band.number("from") < reached) {
          found.accept(
              band.mistake(
                  "from",
                  "the band begins before the last one ends, at " + shown(reached),
                  "Write at least " + shown(reached)));
        }
        reached = Math.max(reached, band.number("to"));
      }
    }
  }

  /** Dates are in weeks, and only dates are written in a format. */
  static void dates(Section family, Consumer<Mistake> found) {
    for (Section cue : family.each("cues")) {
      Section scale = cue.at("scale");
      boolean weeks = scale.text("unit").equals("year and week");
      if (weeks && scale.texts("formats").isEmpty()) {
        found.accept(
            scale.mistake(
                "formats",
                "a date without a format can be read in several ways",
                "Name how the maker writes it, as \"YYWW\""));
      } else if (!weeks && !scale.texts("formats").isEmpty()) {
        found.accept(
            scale.mistake(
                "formats",
                "only a date has a format",
                "Leave it out, or make the unit year and week"));
      }
    }
  }

  /** A line is asked because of an answer to a line before it; it grades and signs its own. */
  static void context(Section family, Consumer<Mistake> found) {
    Map<String, List<String>> before = new LinkedHashMap<>();
    for (Section item : family.each("checklist")) {
      Section askedIf = item.at("askedIf");
      for (String line : askedIf.keys()) {
        if (before.containsKey(line)) {
          listed(askedIf, line, before.getOrDefault(line, List.of()), found);
        } else {
          found.accept(
              askedIf.mistake(
                  line,
                  "no line before this one is called '" + line + "'",
                  Rules.meant(line, before.keySet())));
        }
      }
      for (String key : List.of("grades", "signs")) {
        for (String answer : item.at(key).keys()) {
          if (!item.texts("answers").contains(answer)) {
            found.accept(
                item.at(key)
                    .mistake(
                        answer,
                        "'" + answer + "' is none of the answers",
                        Rules.meant(answer, item.texts("answers"))));
          }
        }
      }
      before.put(item.text("id"), item.texts("answers"));
    }
  }

  /** What blocks is an answer, and the first answer, the unremarkable one, does not block. */
  static void checklist(Section family, Consumer<Mistake> found) {
    for (Section item : family.each("checklist")) {
      List<String> answers = item.texts("answers");
      listed(item, "blocks", answers, found);
      if (!answers.isEmpty() && item.texts("blocks").contains(answers.get(0))) {
        found.accept(
            item.mistake(
                "blocks",
                "'" + answers.get(0) + "' is the unremarkable answer and would block every unit",
                "Put the unremarkable answer first"));
      }
    }
  }

  private static void listed(
      Section section, String key, List<String> answers, Consumer<Mistake> found) {
    List<String> given = section.texts(key);
    for (int i = 0; i < given.size(); i++) {
      if (!answers.contains(given.get(i))) {
        found.accept(
            section.mistake(
                key,
                i,
                "'" + given.get(i) + "' is none of the answers",
                Rules.meant(given.get(i), answers)));
      }
    }
  }
}
