package corewright.station.work;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.inspect.Symptom;
import corewright.bench.inspect.Symptom.Kind;
import corewright.bench.inspect.Symptoms;
import corewright.files.JsonFile;
import corewright.files.JsonSchema;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import corewright.station.work.Answers.Received;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads an answers file, held against its schema and against the family that it names. */
public final class AnswersFile {
  /** What stands in the place of a name until somebody has filled the file in. */
  public static final String NOBODY_YET = "your name";

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
    Family family = families.apply(root.path("received").path("family").asText());
    Answers answers =
        new Answers(
            root.path("who").asText(),
            received(root.path("received")),
            given(family, root.path("cues"), path),
            given(family, root.path("checklist"), path),
            symptoms(root.path("symptoms")),
            words(root.path("agreed")));
    JsonFile.refuse(new AnswersRules(family, file).check(answers));
    return answers;
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

  /** An answer or a number as read, with or without a photograph that lies beside the file. */
  private static Map<String, Given> given(Family family, JsonNode node, Path file) {
    Map<String, Given> given = new LinkedHashMap<>();
    node.properties()
        .forEach(
            e -> {
              JsonNode value = e.getValue();
              JsonNode said = value.isObject() ? value.path("answer") : value;
              Optional<Path> photo =
                  value.hasNonNull("photo")
                      ? Optional.of(file.resolveSibling(value.path("photo").asText()))
                      : Optional.empty();
              Optional<Cue> cue =
                  family.cues().stream().filter(c -> c.id().equals(e.getKey())).findFirst();
              given.put(e.getKey(), Given.of(cue, said.asText(), photo));
            });
    return given;
  }

  /** Codes one by one with where they belong, then when it happens and after what it began. */
  private static Map<String, Given> symptoms(JsonNode node) {
    Map<String, Given> given = new LinkedHashMap<>();
    int count = 0;
    for (JsonNode code : node.path("codes")) {
      count++;
      given.put(
          Symptoms.CODE + count,
          new Given(code.path("where").asText(), code.path("code").asText(), Optional.empty()));
    }
    if (node.path("codes").isArray() && count == 0) {
      given.put(Kind.CODES.id(), new Given(Symptom.NO_CODES.words(), "", Optional.empty()));
    }
    for (Kind kind : List.of(Kind.WHEN, Kind.AFTER)) {
      String said = node.path(kind.name().toLowerCase(Locale.ROOT)).asText();
      if (!said.isEmpty()) {
        given.put(kind.id(), new Given(said, "", Optional.empty()));
      }
    }
    return given;
  }

  private static Map<String, String> words(JsonNode node) {
    Map<String, String> words = new LinkedHashMap<>();
    node.properties().forEach(e -> words.put(e.getKey(), e.getValue().asText()));
    return words;
  }
}
