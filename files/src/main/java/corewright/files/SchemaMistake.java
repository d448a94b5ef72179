package corewright.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The schema library's finding in words for a person, with what to do.
 *
 * @param meant JSON pointer of the key that was probably meant, for an unknown key
 * @param missing JSON pointer of the key that is not there, for a missing key
 */
record SchemaMistake(Mistake mistake, Optional<String> meant, Optional<String> missing) {

  /**
   * @param schema root of the schema
   * @param file what was held against it
   */
  static SchemaMistake of(Error error, JsonNode schema, JsonFile file) {
    String pointer = String.valueOf(error.getInstanceLocation());
    JsonNode rule = ruleOf(error, schema);
    return switch (String.valueOf(error.getKeyword())) {
      case "additionalProperties", "unevaluatedProperties" ->
          unknownKey(String.valueOf(error.getProperty()), pointer, rule, file);
      case "required" -> missingKey(String.valueOf(error.getProperty()), pointer, rule, file);
      default -> plain(file, pointer, RuleWords.broken(error, rule, file.root().at(pointer)));
    };
  }

  /** The part of the schema whose keyword was broken. */
  private static JsonNode ruleOf(Error error, JsonNode schema) {
    String at = String.valueOf(error.getSchemaLocation().getFragment());
    return schema.at(at.startsWith("/") ? at.substring(0, at.lastIndexOf('/')) : "");
  }

  private static SchemaMistake plain(JsonFile file, String pointer, RuleWords words) {
    return new SchemaMistake(
        file.mistake(pointer, words.message(), words.suggestion()),
        Optional.empty(),
        Optional.empty());
  }

  private static SchemaMistake unknownKey(String key, String in, JsonNode rule, JsonFile file) {
    List<String> known = new ArrayList<>();
    rule.path("properties").fieldNames().forEachRemaining(known::add);
    List<String> free = known.stream().filter(k -> !file.root().at(in).has(k)).toList();
    Optional<String> otherUnit =
        free.stream().filter(k -> unit(k).isPresent() && stem(k).equals(stem(key))).findFirst();
    Optional<String> meant = otherUnit.or(() -> Nearest.to(key, free));
    String suggestion =
        otherUnit
            .map(k -> "Write '" + k + "', with the number in " + unit(k).orElse(""))
            .or(() -> meant.map(k -> "Did you mean '" + k + "'?"))
            .orElse("Known here: " + String.join(", ", known));
    return new SchemaMistake(
        file.mistake(
            in + "/" + JsonReading.escape(key), "nothing here is called '" + key + "'", suggestion),
        meant.map(k -> in + "/" + k),
        Optional.empty());
  }

  private static SchemaMistake missingKey(String key, String in, JsonNode rule, JsonFile file) {
    String what = rule.path("properties").path(key).path("description").asText("");
    return new SchemaMistake(
        file.mistake(
            in,
            "'" + key + "' is missing",
            "Add \"" + key + "\"" + (what.isEmpty() ? "" : ": " + what)),
        Optional.empty(),
        Optional.of(in + "/" + key));
  }

  private static String stem(String key) {
    int unit = key.lastIndexOf('_');
    return unit < 0 ? key : key.substring(0, unit);
  }

  private static Optional<String> unit(String key) {
    int unit = key.lastIndexOf('_');
    return unit < 0 ? Optional.empty() : Optional.of(key.substring(unit + 1));
  }
}
