package corewright.bench.inspect;

import corewright.bench.record.CueAnswer;
import corewright.profiles.CheckItem;
import corewright.profiles.Family;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which lines of a family's checklist are asked of a unit, and what they come to. */
public final class Checklist {
  /** Between the id of a line and the mark of a pin, as in {@code pins/3}. */
  public static final String PIN = "/";

  private Checklist() {}

  /**
   * The answer of each line. A line that is asked by pin is as bad as its worst pin.
   *
   * @param answers by id; what is no line of the checklist is kept as it is
   */
  public static Map<String, String> worst(Family family, Map<String, String> answers) {
    Map<String, String> worst = new LinkedHashMap<>(answers);
    for (CheckItem item : family.checklist()) {
      if (item.perPin()) {
        answers.forEach(
            (id, answer) -> {
              int bad = item.answers().indexOf(answer);
              String line = worst.getOrDefault(item.id(), "");
              if (id.startsWith(item.id() + PIN) && bad > item.answers().indexOf(line)) {
                worst.put(item.id(), answer);
              }
            });
      }
    }
    return worst;
  }

  /** Answers by id, the latest of each, with every line as bad as its worst pin. */
  public static Map<String, String> worst(Family family, List<CueAnswer> answers) {
    Map<String, String> byId = new LinkedHashMap<>();
    answers.forEach(a -> byId.put(a.cue(), a.answer()));
    return worst(family, byId);
  }

  /** The lines that are worth asking, given what was answered so far. */
  public static List<CheckItem> asked(Family family, Map<String, String> answers) {
    return family.checklist().stream().filter(item -> isAsked(item, answers)).toList();
  }

  private static boolean isAsked(CheckItem item, Map<String, String> answers) {
    return item.askedIf().isEmpty()
        || item.askedIf().entrySet().stream()
            .anyMatch(e -> e.getValue().contains(answers.getOrDefault(e.getKey(), "")));
  }
}
