package corewright.station.work;

import java.util.Map;

/**
 * What people say about one core: who it belongs to, what they saw, what was agreed. Read from an
 * answers file ({@link AnswersFile}), or asked one by one.
 *
 * @param who who looked and answers for it
 * @param cues answer by cue id of the family's key
 * @param checklist answer by checklist id
 * @param agreed what was agreed with the customer and what the shop has, by name; see the schema
 */
public record Answers(
    String who,
    Received received,
    Map<String, String> cues,
    Map<String, String> checklist,
    Map<String, String> agreed) {

  public Answers {
    cues = Map.copyOf(cues);
    checklist = Map.copyOf(checklist);
    agreed = Map.copyOf(agreed);
  }

  /**
   * What is written on the core tag.
   *
   * @param serial the maker's serial, exactly as read
   * @param label the label, exactly as read
   * @param mode {@code repair}, {@code exchange} or {@code stock}
   * @param complaint the customer's words
   */
  public record Received(
      String family, String serial, String label, String customer, String mode, String complaint) {}
}
