package corewright.bench.wire;

import corewright.fixtures.describe.Argument;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.describe.Vocabulary.Verb;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * With which values an action is tried: all at their least, each at its most, all at their most.
 */
final class DialectValues {
  private DialectValues() {}

  /**
   * One try.
   *
   * @param values by the argument's name
   * @param argument that alone stands at an end; empty if more than one does
   * @param at {@code least} or {@code most}
   */
  record Variant(Map<String, Object> values, String argument, String at) {}

  static List<Variant> of(Dialect dialect, Verb verb) {
    if (!dialect.can(verb.name())) {
      return List.of();
    }
    List<String> names =
        verb.arguments().stream().filter(dialect.arguments()::containsKey).sorted().toList();
    List<Variant> variants = new ArrayList<>();
    variants.add(new Variant(all(dialect, names, false), only(names), "least"));
    if (names.size() > 1) {
      for (String name : names) {
        Map<String, Object> values = all(dialect, names, false);
        values.put(name, end(dialect, name, true));
        variants.add(new Variant(values, name, "most"));
      }
    }
    if (!names.isEmpty()) {
      variants.add(new Variant(all(dialect, names, true), only(names), "most"));
    }
    return variants;
  }

  private static String only(List<String> names) {
    return names.size() == 1 ? names.get(0) : "";
  }

  private static Map<String, Object> all(Dialect dialect, List<String> names, boolean most) {
    Map<String, Object> values = new HashMap<>();
    names.forEach(n -> values.put(n, end(dialect, n, most)));
    return values;
  }

  /** A switch is on first and off last. */
  private static Object end(Dialect dialect, String name, boolean most) {
    Argument argument = Objects.requireNonNull(dialect.arguments().get(name));
    return argument.kind() == Argument.Kind.SWITCH
        ? (Object) !most
        : (Object) (most ? argument.most() : argument.least());
  }
}
