package corewright.profiles;

import java.util.List;

/**
 * One line of the short checklist.
 *
 * @param answers the possible answers, the unremarkable one first
 * @param blocks answers with which nothing may be energised, as {@code wet}
 * @param meaning what a remarkable answer means, one sentence
 */
public record CheckItem(
    String id, String question, List<String> answers, List<String> blocks, String meaning) {

  public CheckItem {
    answers = List.copyOf(answers);
    blocks = List.copyOf(blocks);
  }
}
