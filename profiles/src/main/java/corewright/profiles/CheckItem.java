package corewright.profiles;

import java.util.List;
import java.util.Map;

/**
 * One line of the checklist.
 *
 * @param group where it is looked at, as {@code outside} or {@code connector}
 * @param answers the possible answers, the unremarkable one first
 * @param blocks answers with which nothing may be energised, as {@code wet}
 * @param meaning what a remarkable answer means, one sentence
 * @param askedIf by the id of an earlier line the answers that make this one worth asking; empty:
 *     always asked. Of several lines one is enough
 * @param grades by answer the best grade that a core with it can have; unlisted: A
 * @param signs by answer what it says about the unit's past
 * @param perPin asked of each pin that is not as it should be
 */
public record CheckItem(
    String id,
    String group,
    String question,
    List<String> answers,
    List<String> blocks,
    String meaning,
    Map<String, List<String>> askedIf,
    Map<String, Grade> grades,
    Map<String, Sign> signs,
    boolean perPin) {

  /** The line about water: an answer of it that blocks asks for drying and weighing. */
  public static final String MOISTURE = "moisture";

  public CheckItem {
    answers = List.copyOf(answers);
    blocks = List.copyOf(blocks);
    askedIf = Map.copyOf(askedIf);
    grades = Map.copyOf(grades);
    signs = Map.copyOf(signs);
  }

  /** The answer that needs no further word. */
  public String unremarkable() {
    return answers.get(0);
  }
}
