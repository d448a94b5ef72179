package corewright.station.web.place;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What somebody has typed into a form: sent, kept as a draft, or filled in beforehand. */
public record Typed(Map<String, List<String>> fields) {

  public Typed {
    fields = Map.copyOf(fields);
  }

  /** A form as it was sent. */
  static Typed of(Context context) {
    return new Typed(context.formParamMap());
  }

  /** One field; empty where nothing was typed. */
  public String of(String name) {
    return fields.getOrDefault(name, List.of()).stream().findFirst().orElse("").strip();
  }

  /** One field, or what stands there before anybody types. */
  public String or(String name, String before) {
    return fields.containsKey(name) ? of(name) : before;
  }

  /** All values of a field that can be there several times, without the empty ones. */
  public List<String> all(String name) {
    return fields.getOrDefault(name, List.of()).stream()
        .map(String::strip)
        .filter(v -> !v.isEmpty())
        .toList();
  }

  /** Whether a box is ticked, or a choice taken. */
  public boolean has(String name, String value) {
    return fields.getOrDefault(name, List.of()).contains(value);
  }

  /** A field that may be left empty. */
  Optional<String> perhaps(String name) {
    return Optional.of(of(name)).filter(v -> !v.isEmpty());
  }
}
