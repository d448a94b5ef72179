package corewright.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One object of a JSON file, with its place. Reading never fails: what is missing or of another
 * type reads as NaN, as an empty text, as nothing. So rules can be held against a file that has
 * other mistakes as well, and a comparison with NaN finds none.
 */
public final class Section {
  private static final MathContext SHOWN = new MathContext(12);

  private final JsonFile file;
  private final String pointer;
  private final JsonNode node;

  private Section(JsonFile file, String pointer, JsonNode node) {
    this.file = file;
    this.pointer = pointer;
    this.node = node;
  }

  /** The whole file. */
  public static Section of(JsonFile file) {
    return new Section(file, "", file.root());
  }

  public boolean has(String key) {
    return node.has(key);
  }

  /** A number; NaN where there is none. */
  public double number(String key) {
    JsonNode value = node.path(key);
    return value.isNumber() ? value.asDouble() : Double.NaN;
  }

  /** A number, or another where the key is missing. */
  public double number(String key, double otherwise) {
    return has(key) ? number(key) : otherwise;
  }

  public Optional<Double> optional(String key) {
    return has(key) ? Optional.of(number(key)) : Optional.empty();
  }

  public int whole(String key) {
    return node.path(key).asInt();
  }

  /** A text; empty where there is none. */
  public String text(String key) {
    return node.path(key).isTextual() ? node.path(key).asText() : "";
  }

  public boolean flag(String key, boolean otherwise) {
    return node.path(key).asBoolean(otherwise);
  }

  /** The texts of a list. */
  public List<String> texts(String key) {
    List<String> texts = new ArrayList<>();
    node.path(key).forEach(entry -> texts.add(entry.asText()));
    return texts;
  }

  public List<String> keys() {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  public Section at(String key) {
    return new Section(file, in(key), node.path(key));
  }

  /** The objects of a list, in order. */
  public List<Section> each(String key) {
    List<Section> sections = new ArrayList<>();
    for (JsonNode entry : node.path(key)) {
      sections.add(new Section(file, in(key) + "/" + sections.size(), entry));
    }
    return sections;
  }

  /** A mistake at {@code key}; at the section itself where {@code key} is empty. */
  public Mistake mistake(String key, String message, String suggestion) {
    return file.mistake(key.isEmpty() ? pointer : in(key), message, suggestion);
  }

  /** A mistake at an entry of the list {@code key}. */
  public Mistake mistake(String key, int index, String message, String suggestion) {
    return file.mistake(in(key) + "/" + index, message, suggestion);
  }

  /** A number as a file would have it: decimal point, no exponent, at most 12 digits. */
  public static String shown(double number) {
    return Double.isFinite(number)
        ? BigDecimal.valueOf(number).round(SHOWN).stripTrailingZeros().toPlainString()
        : String.valueOf(number);
  }

  private String in(String key) {
    return pointer + "/" + JsonReading.escape(key);
  }
}
