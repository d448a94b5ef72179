package corewright.station.work.books;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.files.JsonFile;
import corewright.files.JsonSchema;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * How an old spreadsheet is read: which column is what, how dates and numbers are written, and
 * which family each of its names for one means.
 *
 * @param separator between cells
 * @param decimal mark in numbers, {@code ,} or {@code .}
 * @param dates as {@code dd.MM.yyyy}; empty where nobody can tell, which refuses every row
 * @param columns header of the column that holds a field
 * @param families family id by what the sheet says
 */
public record Mapping(
    char separator,
    char decimal,
    String dates,
    Map<Field, String> columns,
    Map<String, String> families) {
  private static final JsonSchema SCHEMA =
      JsonSchema.resource(Mapping.class, "mapping.schema.json");

  public Mapping {
    columns = new EnumMap<>(columns);
    families = new TreeMap<>(families);
  }

  /**
   * Reads a mapping that somebody has edited.
   *
   * @throws corewright.files.BadFile with every mistake in it
   */
  public static Mapping read(Path path) {
    JsonFile file = JsonFile.read(path);
    JsonFile.refuse(SCHEMA.check(file));
    JsonNode root = file.root();
    Map<Field, String> columns = new EnumMap<>(Field.class);
    for (Field field : Field.values()) {
      String column = root.at("/columns/" + field.id()).asText("");
      if (!column.isEmpty()) {
        columns.put(field, column);
      }
    }
    Map<String, String> families = new TreeMap<>();
    root.path("families")
        .properties()
        .forEach(e -> families.put(e.getKey(), e.getValue().asText()));
    return new Mapping(
        root.get("separator").asText().charAt(0),
        root.get("decimal").asText().charAt(0),
        root.get("dates").asText(),
        columns,
        families);
  }

  /** As {@link #read} takes it. */
  public ObjectNode json() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("separator", String.valueOf(separator));
    json.put("decimal", String.valueOf(decimal));
    json.put("dates", dates);
    ObjectNode named = json.putObject("columns");
    columns.forEach((field, column) -> named.put(field.id(), column));
    ObjectNode known = json.putObject("families");
    families.forEach(known::put);
    return json;
  }
}
