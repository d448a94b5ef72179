package corewright.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A broken rule of a schema, in words.
 *
 * @param message what is wrong
 * @param suggestion what to do
 */
record RuleWords(String message, String suggestion) {

  /**
   * @param rule the part of the schema that holds the broken keyword
   * @param value what broke it
   */
  static RuleWords broken(Error error, JsonNode rule, JsonNode value) {
    return switch (String.valueOf(error.getKeyword())) {
      case "type" -> wrongType(types(rule.path("type")), value);
      case "enum" -> notListed(words(rule.path("enum")), value);
      case "const" -> notListed(List.of(rule.path("const").asText()), value);
      case "minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum" ->
          new RuleWords(value + " is out of range", "Write a number " + range(rule));
      case "minLength" -> new RuleWords("the text is empty", "Write something");
      case "pattern" ->
          new RuleWords(
              value + " is not written as it must be",
              described(rule, "Follow " + rule.path("pattern")));
      case "minItems" ->
          new RuleWords(
              "the list has " + value.size() + " entries",
              "At least " + rule.path("minItems").asText() + " needed");
      case "maxItems" ->
          new RuleWords(
              "the list has " + value.size() + " entries",
              "At most " + rule.path("maxItems").asText() + " allowed");
      case "uniqueItems" -> new RuleWords("an entry stands here twice", "Remove one of the two");
      default ->
          new RuleWords(String.valueOf(error.getMessage()), described(rule, "Follow the schema"));
    };
  }

  /** The types that a schema allows: it names one, or a list of them. */
  private static List<String> types(JsonNode rule) {
    return rule.isArray() ? words(rule) : List.of(rule.asText("another type"));
  }

  private static RuleWords wrongType(List<String> wanted, JsonNode value) {
    String names = String.join(" or ", wanted.stream().map(RuleWords::typeName).toList());
    String found = value.isContainerNode() ? typeOf(value) : value.toString();
    String message = found + " stands here, and " + names + " is needed";
    boolean number = wanted.contains("number") || wanted.contains("integer");
    if (number && value.isTextual()) {
      String meant = value.asText().strip().replace(',', '.');
      if (meant.matches("[-+]?\\d+(\\.\\d+)?([eE][-+]?\\d+)?")) {
        return new RuleWords(message, "Write " + meant + ", without quotes");
      }
    }
    return new RuleWords(message, "Write " + names);
  }

  private static RuleWords notListed(List<String> allowed, JsonNode value) {
    Optional<String> meant = Nearest.to(value.asText(), allowed);
    return new RuleWords(
        value + " is not one of the words that may stand here",
        meant
            .map(m -> "Did you mean \"" + m + "\"?")
            .orElse("Write one of: " + String.join(", ", allowed)));
  }

  private static List<String> words(JsonNode list) {
    List<String> words = new ArrayList<>();
    list.forEach(word -> words.add(word.asText()));
    return words;
  }

  private static String range(JsonNode rule) {
    List<String> bounds = new ArrayList<>();
    bound(rule, "minimum", "from ", bounds);
    bound(rule, "exclusiveMinimum", "above ", bounds);
    bound(rule, "maximum", bounds.isEmpty() ? "up to " : "to ", bounds);
    bound(rule, "exclusiveMaximum", "below ", bounds);
    return String.join(" ", bounds);
  }

  private static void bound(JsonNode rule, String keyword, String word, List<String> bounds) {
    if (rule.has(keyword)) {
      bounds.add(word + rule.path(keyword).asText());
    }
  }

  private static String described(JsonNode rule, String otherwise) {
    return rule.has("description") ? "Write " + rule.path("description").asText() : otherwise;
  }

  private static String typeOf(JsonNode value) {
    return value.isObject() ? "an object" : "a list";
  }

  private static String typeName(String type) {
    return switch (type) {
      case "object" -> "an object, { … }";
      case "array" -> "a list, [ … ]";
      case "string" -> "text in double quotes";
      case "number" -> "a number";
      case "integer" -> "a whole number";
      case "boolean" -> "true or false";
      default -> type;
    };
  }
}
