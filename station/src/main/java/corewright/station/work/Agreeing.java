package corewright.station.work;

import corewright.bench.record.CueAnswer;
import corewright.bench.run.Clock;
import corewright.reports.ledger.Ledger;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What the decision table asks of people and not of instruments: said about one unit, kept with who
 * said it, and read when the unit is decided about next.
 */
public final class Agreeing {
  /** What can be said, in the order in which it is asked; the plain answer first. */
  public static final List<Question> QUESTIONS =
      List.of(
          new Question(
              "approval",
              "What did the customer say to the quote?",
              List.of("not asked", "approved", "declined", "silent")),
          new Question(
              "parts", "Are the parts there?", List.of("in stock", "exchange agreed", "missing")),
          new Question(
              "coverage",
              "Were the conditions of the complaint tried?",
              List.of("complete", "temperature open", "soak open")),
          new Question(
              "cause", "Did something outside the unit do it?", List.of("none", "uncorrected")),
          new Question("data", "Does it hold data of its vehicle?", List.of("none", "paired")),
          new Question("lock", "Does anyone dispute whose it is?", List.of("free", "disputed")),
          new Question(
              "preventive",
              "Shall it be rebuilt although it passes?",
              List.of("not wanted", "wanted")),
          new Question("foreign", "Is it none of the shop's kind?", List.of("no", "yes")));

  private final Ledger ledger;
  private final Clock clock;

  Agreeing(Ledger ledger, Clock clock) {
    this.ledger = ledger;
    this.clock = clock;
  }

  /** One thing that can be said; the words are those of the answers file. */
  public record Question(String name, String words, List<String> answers) {}

  /** What was said of a unit on this visit, by name. */
  public Map<String, String> said(String tag) {
    return ledger.dossier(tag).answers().stream()
        .filter(a -> a.cue().startsWith(Deciding.AGREED))
        .collect(
            Collectors.toMap(
                a -> a.cue().substring(Deciding.AGREED.length()),
                CueAnswer::answer,
                (before, later) -> later));
  }

  /**
   * Says one thing.
   *
   * @param by who of the customer's people said so, or where it is known from; may be empty
   * @throws Refused if nothing is asked by that name, or that is no answer
   */
  public void say(String tag, String name, String answer, String by, String who) {
    Question question =
        QUESTIONS.stream()
            .filter(q -> q.name().equals(name))
            .findFirst()
            .orElseThrow(
                () -> new Refused("Nothing is agreed by the name '" + name + "'", "Choose one."));
    if (!question.answers().contains(answer)) {
      throw new Refused(
          "'" + answer + "' is no answer to '" + name + "'",
          "Possible are " + String.join(", ", question.answers()) + ".");
    }
    ledger.answers(
        tag, List.of(new CueAnswer(Deciding.AGREED + name, answer, who, clock.wall(), by, "")));
  }
}
