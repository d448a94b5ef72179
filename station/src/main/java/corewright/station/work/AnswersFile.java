package corewright.station.work;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.files.JsonFile;
import corewright.files.JsonSchema;
import corewright.files.Mistake;
import corewright.files.Nearest;
import corewright.profiles.CheckItem;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.station.work.Answers.Received;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Reads an answers file, held against its schema and against the family that it names. */
public final class AnswersFile {
  private static final JsonSchema SCHEMA =
      JsonSchema.resource(AnswersFile.class, "answers.schema.json");

  private AnswersFile() {}

  /**
   * Reads one file.
   *
   * @param families finds a family by its id
   * @throws corewright.files.BadFile with every mistake: unknown family, cue or answer among them
   */
  public static Answers read(Path path, Function<String, Family> families) {
    JsonFile file = JsonFile.read(path);
    JsonFile.refuse(SCHEMA.check(file));
    JsonNode root = file.root();
    Answers answers =
        new Answers(
            root.path("who").asText(),
            received(root.path("received")),
            words(root.path("cues")),
            words(root.path("checklist")),
            words(root.path("agreed")));
    JsonFile.refuse(against(families.apply(answers.received().family()), answers, file));
    return answers;
  }

  private static List<Mistake> against(Family family, Answers answers, JsonFile file) {
    List<Mistake> mistakes = new ArrayList<>();
    Map<String, List<String>> cues = new LinkedHashMap<>();
    for (Cue cue : family.cues()) {
      cues.put(cue.id(), cue.answers());
    }
    Map<String, List<String>> checks = new LinkedHashMap<>();
    for (CheckItem item : family.checklist()) {
      checks.put(item.id(), item.answers());
    }
    known(file, "/cues/", answers.cues(), cues, mistakes);
    known(file, "/checklist/", answers.checklist(), checks, mistakes);
    return mistakes;
  }

  private static void known(
      JsonFile file,
      String pointer,
      Map<String, String> given,
      Map<String, List<String>> asked,
      List<Mistake> mistakes) {
    given.forEach(
        (id, answer) -> {
          List<String> possible = asked.get(id);
          if (possible == null) {
            mistakes.add(
                file.mistake(
                    pointer + id,
                    "nothing is asked by the name '" + id + "'",
                    "Asked are " + String.join(", ", asked.keySet())));
          } else if (!possible.contains(answer)) {
            mistakes.add(
                file.mistake(
                    pointer + id,
                    "'" + answer + "' is no answer to " + id,
                    Nearest.to(answer, possible)
                            .map(near -> "Perhaps '" + near + "'; possible are ")
                            .orElse("Possible are ")
                        + String.join(", ", possible)));
          }
        });
  }

  private static Received received(JsonNode node) {
    return new Received(
        node.path("family").asText(),
        node.path("serial").asText(),
        node.path("label").asText(""),
        node.path("customer").asText(""),
        node.path("mode").asText("repair"),
        node.path("complaint").asText(""));
  }

  private static Map<String, String> words(JsonNode node) {
    Map<String, String> words = new LinkedHashMap<>();
    node.properties().forEach(e -> words.put(e.getKey(), e.getValue().asText()));
    return words;
  }
}
