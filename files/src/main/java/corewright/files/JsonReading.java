package corewright.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One pass over a JSON text that builds the values and notes where each of them stands. The
 * library's own tree keeps no places, and keeps the last of two equal keys without a word.
 */
final class JsonReading {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Origin origin;
  private final Map<String, Place> places = new HashMap<>();
  private final List<Mistake> mistakes = new ArrayList<>();
  private JsonNode root = MissingNode.getInstance();

  private JsonReading(Origin origin) {
    this.origin = origin;
  }

  static JsonReading of(Origin origin) {
    JsonReading reading = new JsonReading(origin);
    try (JsonParser parser = new JsonFactory().createParser(origin.text())) {
      reading.readAll(parser);
    } catch (JsonProcessingException syntax) {
      reading.add(
          place(syntax.getLocation()), "syntax", SyntaxHint.said(syntax), SyntaxHint.of(syntax));
    } catch (IOException impossible) {
      throw new UncheckedIOException("a text in memory cannot fail to be read", impossible);
    }
    return reading;
  }

  JsonNode root() {
    return root;
  }

  Map<String, Place> places() {
    return places;
  }

  List<Mistake> mistakes() {
    return mistakes;
  }

  private void readAll(JsonParser parser) throws IOException {
    if (parser.nextToken() == null) {
      add(new Place(1, 1), "syntax", "the file is empty", "Write a JSON object, { … }");
      return;
    }
    places.put("", place(parser.currentTokenLocation()));
    root = value(parser, "");
    if (parser.nextToken() != null) {
      add(
          place(parser.currentTokenLocation()),
          "syntax",
          "something follows after the end of the JSON value",
          "Remove it, or the bracket that closed too early");
    }
  }

  /** The value at the parser's token; leaves the parser at its last token. */
  private JsonNode value(JsonParser parser, String pointer) throws IOException {
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> object(parser, pointer);
      case START_ARRAY -> array(parser, pointer);
      case VALUE_STRING -> NODES.textNode(parser.getText());
      case VALUE_NUMBER_INT -> NODES.numberNode(parser.getBigIntegerValue());
      case VALUE_NUMBER_FLOAT -> number(parser, pointer);
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      default -> NODES.nullNode();
    };
  }

  private JsonNode number(JsonParser parser, String pointer) throws IOException {
    double number = parser.getDoubleValue();
    if (Double.isInfinite(number)) {
      add(
          place(parser.currentTokenLocation()),
          pointer,
          parser.getText() + " is too large for a number",
          "Write a number that a bench can reach");
    }
    return NODES.numberNode(number);
  }

  private ObjectNode object(JsonParser parser, String pointer) throws IOException {
    ObjectNode object = NODES.objectNode();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String key = parser.currentName();
      String at = pointer + "/" + escape(key);
      Place here = place(parser.currentTokenLocation());
      Place first = places.putIfAbsent(at, here);
      if (first != null) {
        add(
            here,
            at,
            "the key '" + key + "' stands here again, first on line " + first.line(),
            "Remove one of the two");
      }
      parser.nextToken();
      object.set(key, value(parser, at));
    }
    return object;
  }

  private ArrayNode array(JsonParser parser, String pointer) throws IOException {
    ArrayNode array = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      String at = pointer + "/" + array.size();
      places.putIfAbsent(at, place(parser.currentTokenLocation()));
      array.add(value(parser, at));
    }
    return array;
  }

  private void add(Place place, String where, String message, String suggestion) {
    mistakes.add(new Mistake(origin.path(), place.line(), where, message, suggestion));
  }

  private static Place place(JsonLocation location) {
    return new Place(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
  }

  /** RFC 6901, 3: {@code ~} and {@code /} inside a name. */
  static String escape(String key) {
    return key.replace("~", "~0").replace("/", "~1");
  }
}
