package corewright.files;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * A JSON file as a person wrote it: its values, where each of them stands, and where it is from.
 */
public final class JsonFile {
  private final JsonNode root;
  private final Map<String, Place> places;
  private final Origin origin;

  private JsonFile(JsonNode root, Map<String, Place> places, Origin origin) {
    this.root = root;
    this.places = Map.copyOf(places);
    this.origin = origin;
  }

  /**
   * Reads a file.
   *
   * @throws BadFile if it cannot be read, is not UTF-8, is not JSON, or repeats a key
   */
  public static JsonFile read(Path file) {
    return of(TextFile.read(file));
  }

  /**
   * Reads a text that is already here.
   *
   * @throws BadFile if it is not JSON, or repeats a key
   */
  public static JsonFile of(Origin origin) {
    JsonReading reading = JsonReading.of(origin);
    if (!reading.mistakes().isEmpty()) {
      throw new BadFile(reading.mistakes());
    }
    return new JsonFile(reading.root(), reading.places(), origin);
  }

  public JsonNode root() {
    return root;
  }

  public Origin origin() {
    return origin;
  }

  /**
   * Where the value with this JSON pointer (RFC 6901) stands: its key, or itself in a list; for a
   * value that is missing, what would contain it.
   */
  public Place place(String pointer) {
    String at = pointer;
    while (!at.isEmpty()) {
      Place place = places.get(at);
      if (place != null) {
        return place;
      }
      at = at.substring(0, at.lastIndexOf('/'));
    }
    return places.getOrDefault("", new Place(1, 1));
  }

  /** A mistake at the value with this JSON pointer. */
  public Mistake mistake(String pointer, String message, String suggestion) {
    String where = pointer.isEmpty() ? "/" : pointer;
    return new Mistake(origin.path(), place(pointer).line(), where, message, suggestion);
  }

  /**
   * Goes on only with a file without mistakes.
   *
   * @throws BadFile with all of {@code mistakes}, in the order of their lines, if there are any
   */
  public static void refuse(List<Mistake> mistakes) {
    if (!mistakes.isEmpty()) {
      throw new BadFile(
          mistakes.stream()
              .sorted(Comparator.comparing(Mistake::file).thenComparingInt(Mistake::line))
              .toList());
    }
  }
}
