package corewright.station.work;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What people say about one core: who it belongs to, what they saw, what was agreed. Read from an
 * answers file ({@link AnswersFile}), or asked one by one.
 *
 * @param who who looked and answers for it
 * @param cues answer by cue id of the family's key
 * @param checklist answer by checklist id, by id and pin as {@code pins/3}
 * @param symptoms what the customer reported, by id of the record; codes with their text as read
 * @param agreed what was agreed with the customer and what the shop has, by name; see the schema
 */
public record Answers(
    String who,
    Received received,
    Map<String, Given> cues,
    Map<String, Given> checklist,
    Map<String, Given> symptoms,
    Map<String, String> agreed) {

  public Answers {
    cues = inOrder(cues);
    checklist = inOrder(checklist);
    symptoms = inOrder(symptoms);
    agreed = inOrder(agreed);
  }

  /** Without anything that the customer reported. */
  public Answers(
      String who,
      Received received,
      Map<String, Given> cues,
      Map<String, Given> checklist,
      Map<String, String> agreed) {
    this(who, received, cues, checklist, Map.of(), agreed);
  }

  /** The record keeps answers in the order in which they were given. */
  private static <T> Map<String, T> inOrder(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
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
