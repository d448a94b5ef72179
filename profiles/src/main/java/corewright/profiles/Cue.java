package corewright.profiles;

import java.util.List;

/**
 * An observable feature that tells builds apart.
 *
 * @param id as {@code bosses}
 * @param question what the technician is asked, one sentence
 * @param look where and how to look, one sentence
 * @param travelsWith what the cue really identifies: a label identifies a cover, only the board the
 *     board
 * @param reliability chance that the answer as read is right about the build, 0 to 1
 * @param cost_s what asking costs, in seconds of work
 * @param answers the possible answers
 */
public record Cue(
    String id,
    String question,
    String look,
    TravelsWith travelsWith,
    double reliability,
    double cost_s,
    List<String> answers) {

  public Cue {
    answers = List.copyOf(answers);
  }

  /** The part of the unit that a cue moves with. Everything on the label together has one vote. */
  public enum TravelsWith {
    LABEL,
    COVER,
    HEADER,
    BOARD,
    BENCH,
    CUSTOMER
  }
}
