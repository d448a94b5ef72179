package corewright.station.work;

import corewright.bench.identify.Identifier;
import corewright.bench.identify.Quantified;
import corewright.bench.inspect.Symptoms;
import corewright.files.JsonFile;
import corewright.files.Mistake;
import corewright.files.Nearest;
import corewright.profiles.CheckItem;
import corewright.profiles.Cue;
import corewright.profiles.DateFormat;
import corewright.profiles.Family;
import corewright.profiles.Scale;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What an answers file must keep beyond its schema: it answers what its family asks. */
final class AnswersRules {
  private final Family family;
  private final JsonFile file;

  AnswersRules(Family family, JsonFile file) {
    this.family = family;
    this.file = file;
  }

  List<Mistake> check(Answers answers) {
    List<Mistake> mistakes = new ArrayList<>();
    if (answers.who().strip().equals(AnswersFile.NOBODY_YET)) {
      mistakes.add(file.mistake("/who", "nobody has filled this in", "Write who saw the core"));
    }
    Map<String, List<String>> cues = new LinkedHashMap<>();
    family.cues().forEach(c -> cues.put(c.id(), c.answers()));
    Map<String, List<String>> checks = new LinkedHashMap<>();
    for (CheckItem item : family.checklist()) {
      checks.put(item.id(), item.answers());
      if (item.perPin()) {
        family.pins().forEach(p -> checks.put(item.id() + "/" + p.pin(), item.answers()));
      }
    }
    known("/cues/", answers.cues(), cues, mistakes);
    known("/checklist/", answers.checklist(), checks, mistakes);
    answers.symptoms().forEach((id, said) -> places(id, said, mistakes));
    return mistakes;
  }

  /** A code belongs to an output that there is, or to one of the other places. */
  private void places(String id, Given said, List<Mistake> mistakes) {
    if (!id.startsWith(Symptoms.CODE) || Symptoms.PLACES.contains(said.answer())) {
      return;
    }
    boolean output =
        said.answer().matches("[1-9][0-9]?") && Integer.parseInt(said.answer()) <= family.outputs();
    if (!output) {
      int index = Integer.parseInt(id.substring(Symptoms.CODE.length())) - 1;
      mistakes.add(
          file.mistake(
              "/symptoms/codes/" + index + "/where",
              "'" + said.answer() + "' is no output of " + family.id(),
              "Write 1 to " + family.outputs() + ", or " + String.join(", ", Symptoms.PLACES)));
    }
  }

  private void known(
      String pointer,
      Map<String, Given> given,
      Map<String, List<String>> asked,
      List<Mistake> mistakes) {
    given.forEach(
        (id, said) -> {
          List<String> possible = asked.get(id);
          if (possible == null) {
            mistakes.add(
                file.mistake(
                    pointer + id.replace("/", "~1"),
                    "nothing is asked by the name '" + id + "'",
                    Nearest.to(id, asked.keySet())
                            .map(near -> "Perhaps '" + near + "'; asked are ")
                            .orElse("Asked are ")
                        + String.join(", ", asked.keySet())));
          } else if (!possible.contains(said.answer()) && !readable(id, said)) {
            mistakes.add(
                file.mistake(
                    pointer + id.replace("/", "~1"),
                    "'" + said.words() + "' is no answer to " + id,
                    Nearest.to(said.words(), possible)
                            .map(near -> "Perhaps '" + near + "'; possible are ")
                            .orElse("Possible are ")
                        + String.join(", ", possible)
                        + orAsRead(id)));
          }
        });
  }

  /** Not seen, or a number that the key turns into an answer; what it then means is the key's. */
  private boolean readable(String id, Given said) {
    if (!said.answer().equals(Identifier.NOT_SEEN)) {
      return false;
    }
    return said.read().isEmpty()
        || scale(id)
            .map(
                s ->
                    s.isDate()
                        ? !DateFormat.digits(said.read()).isEmpty()
                        : !Double.isNaN(Quantified.of(said.read(), s.unit()).value()))
            .orElse(false);
  }

  private String orAsRead(String id) {
    return scale(id)
        .map(s -> s.isDate() ? ", or the code as it stands" : ", or the number in " + s.unit())
        .orElse("");
  }

  private Optional<Scale> scale(String id) {
    return family.cues().stream().filter(c -> c.id().equals(id)).findFirst().flatMap(Cue::scale);
  }
}
