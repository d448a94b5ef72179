package corewright.profiles;

import java.util.List;
import java.util.Optional;

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
 * @param scale for a cue that is a number (mass, converter frequency, date): which answer it stands
 *     for
 * @param reliabilityOpened the reliability once somebody was inside; empty where that changes
 *     nothing
 */
public record Cue(
    String id,
    String question,
    String look,
    TravelsWith travelsWith,
    double reliability,
    double cost_s,
    List<String> answers,
    Optional<Scale> scale,
    Optional<Double> reliabilityOpened) {

  public Cue {
    answers = List.copyOf(answers);
  }

  /** By the id alone: what is weighed looks cues up by the thousand, and all of one took longer. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  /** A cue that a hand inside the unit does not change. */
  public Cue(
      String id,
      String question,
      String look,
      TravelsWith travelsWith,
      double reliability,
      double cost_s,
      List<String> answers,
      Optional<Scale> scale) {
    this(id, question, look, travelsWith, reliability, cost_s, answers, scale, Optional.empty());
  }

  /** A cue that is looked at, not measured. */
  public Cue(
      String id,
      String question,
      String look,
      TravelsWith travelsWith,
      double reliability,
      double cost_s,
      List<String> answers) {
    this(id, question, look, travelsWith, reliability, cost_s, answers, Optional.empty());
  }

  /** The same cue on a unit that somebody has opened before. */
  public Cue opened() {
    return new Cue(
        id,
        question,
        look,
        travelsWith,
        reliabilityOpened.orElse(reliability),
        cost_s,
        answers,
        scale,
        reliabilityOpened);
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
