package corewright.bench.inspect;

import corewright.bench.record.CueAnswer;
import corewright.profiles.CheckItem;
import corewright.profiles.Grade;
import java.util.List;
import java.util.Optional;

/**
 * In which condition a unit came.
 *
 * @param lines what was answered, in the order of the checklist
 * @param grade the worst that an answer allows; empty where nothing was answered
 * @param because the answers that made the grade, as {@code pins: bent}
 * @param blocking answers with which nothing may be energised, as {@code pins: bent}
 * @param open lines that were asked for and are not answered, by id; with the pins where a line is
 *     remarkable and no pin is named
 * @param mass empty where it was not weighed, or where no build is known to hold it against
 */
public record Inspection(
    List<Line> lines,
    Optional<Grade> grade,
    List<String> because,
    List<String> blocking,
    List<String> open,
    Optional<MassCheck> mass) {

  public Inspection {
    lines = List.copyOf(lines);
    because = List.copyOf(because);
    blocking = List.copyOf(blocking);
    open = List.copyOf(open);
  }

  /**
   * One line that was answered.
   *
   * @param answer what counts: the worst of the line and its pins
   * @param given who said it and when; empty where only pins were told
   * @param pins what was said of single pins, as {@code pins/3}
   */
  public record Line(
      CheckItem item, String answer, Optional<CueAnswer> given, List<CueAnswer> pins) {
    public Line {
      pins = List.copyOf(pins);
    }

    /** Whether the answer needs a further word. */
    public boolean isRemarkable() {
      return !answer.equals(item.unremarkable());
    }
  }

  /** What the grade means, or that there is none. */
  public String gradeWords() {
    return grade
        .map(
            g ->
                "Grade "
                    + g
                    + (because.isEmpty()
                        ? ", nothing remarkable"
                        : ", for " + String.join(", ", because))
                    + ".")
        .orElse("Not graded: nothing was answered.");
  }
}
