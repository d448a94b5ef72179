package corewright.station.work;

import corewright.bench.life.ClaimClass.Outcome;
import corewright.bench.life.ClaimFacts.Cause;
import corewright.bench.life.ClaimFacts.Coverage;
import corewright.bench.life.ClaimFacts.Group;
import corewright.bench.life.ClaimFacts.Identity;
import corewright.bench.life.ClaimFacts.Seal;
import corewright.bench.life.Claims;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Dossier;
import corewright.bench.run.Clock;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.Happened;
import corewright.reports.ledger.Ledger;
import java.util.List;
import java.util.Optional;

/**
 * Leads people through an open claim, one question at a time, in the order of the table of claims.
 * Each answer is in the record with what it rests on before the next is asked.
 */
public final class ClaimTalk {
  /** Answers about a claim are kept beside those about cues, under this prefix. */
  private static final String CLAIM = "claim/";

  private static final List<Question> QUESTIONS =
      List.of(
          new Question(
              "C10",
              "identity",
              "Is it our unit, by serial and hidden mark?",
              List.of(new Answer("OURS", "ours"), new Answer("NOT_OURS", "not ours"))),
          new Question(
              "C30",
              "seal",
              "Are the seal and the mark whole? Photograph them before anything is opened.",
              List.of(new Answer("INTACT", "intact"), new Answer("BROKEN", "broken or gone"))),
          new Question(
              "C40",
              "coverage",
              "Did it pass cold, hot and tapped too?",
              List.of(new Answer("COMPLETE", "all three"))),
          new Question(
              "C50",
              "cause",
              "Did something outside the unit do it?",
              List.of(new Answer("NONE", "no"), new Answer("EXTERNAL", "yes"))),
          new Question(
              "C60",
              "group",
              "Which group failed, from the teardown?",
              List.of(
                  new Answer("SAME", "the one that was rebuilt"),
                  new Answer("OTHER", "another one"))));

  private final Claiming claiming;
  private final Ledger ledger;
  private final FileStore files;
  private final Clock clock;

  ClaimTalk(Claiming claiming, Ledger ledger, FileStore files, Clock clock) {
    this.claiming = claiming;
    this.ledger = ledger;
    this.files = files;
    this.clock = clock;
  }

  /**
   * One question of the table.
   *
   * @param row that asks it
   */
  public record Question(String row, String name, String words, List<Answer> answers) {}

  /** One answer; {@code value} is the table's own word for it. */
  public record Answer(String value, String words) {}

  /**
   * Where a claim stands.
   *
   * @param here whether the unit came back and was received
   * @param row of the table that fits as things are
   * @param question that the row asks of people; empty where it asks the bench, or gives a class
   * @param said what was answered, each with what it rests on
   * @param seal number and hidden mark with which the unit left; empty where it was not sealed
   */
  public record State(
      Claim claim,
      Dossier dossier,
      boolean here,
      Claims.Row row,
      Optional<Question> question,
      List<CueAnswer> said,
      String seal) {}

  /**
   * The open claim of a unit.
   *
   * @throws Refused if none is open
   */
  public State of(String tag) {
    Dossier dossier = ledger.dossier(tag);
    Claim claim = open(dossier.core().tag());
    boolean here = dossier.visit() != claim.shippedVisit();
    Claims.Row row = claiming.classify(tag, found(dossier, here));
    return new State(
        claim,
        dossier,
        here,
        row,
        QUESTIONS.stream().filter(q -> here && q.row().equals(row.id())).findFirst(),
        here ? said(dossier) : List.of(),
        seal(dossier.core().tag()));
  }

  /**
   * Writes one answer down.
   *
   * @param rests what it rests on, a line; a photograph or words, one of them at least
   * @throws Refused if it is not asked, is no answer, or rests on nothing
   */
  public void say(
      String tag,
      String name,
      String value,
      String rests,
      Optional<Photographs.Taken> photo,
      String who) {
    State state = of(tag);
    Question question =
        state
            .question()
            .filter(q -> q.name().equals(name))
            .orElseThrow(
                () ->
                    new Refused(
                        "'" + name + "' is not asked about the claim for " + tag + " now",
                        state.here() ? "Answer what is asked." : "Receive the unit first."));
    if (question.answers().stream().noneMatch(a -> a.value().equals(value))) {
      throw new Refused("That is no answer to '" + question.words() + "'", "Choose one.");
    }
    if (rests.isBlank() && photo.isEmpty()) {
      throw new Refused(
          "An answer about a claim rests on something", "Say what you saw, or add a photograph.");
    }
    String hash =
        photo
            .map(p -> files.attach(tag, p.file(), "photo", "claim, " + name, who).sha256())
            .orElse("");
    ledger.answers(
        tag, List.of(new CueAnswer(CLAIM + name, value, who, clock.wall(), rests, hash)));
  }

  /**
   * Closes the claim with the class that the table gives, on what was said.
   *
   * @throws Refused if the table still has a question
   */
  public Claim close(String tag, Optional<Outcome> outcome, String reason, String who) {
    State state = of(tag);
    List<String> evidence = state.said().stream().map(ClaimTalk::evidence).toList();
    return claiming.close(
        tag,
        found(state.dossier(), state.here()),
        new Claiming.Ending(
            evidence.isEmpty() ? List.of("the record of its shipment") : evidence, outcome, reason),
        who);
  }

  private static String evidence(CueAnswer said) {
    return said.cue().substring(CLAIM.length())
        + " "
        + said.answer()
        + (said.read().isEmpty() ? "" : ": " + said.read())
        + (said.photo().isEmpty() ? "" : ", photo " + said.photo());
  }

  private Claim open(String tag) {
    return ledger.claims().of(tag).stream()
        .filter(c -> c.closed().isEmpty())
        .findFirst()
        .orElseThrow(() -> new Refused("No claim is open for " + tag, "Open one first."));
  }

  private static List<CueAnswer> said(Dossier dossier) {
    return dossier.answers().stream().filter(a -> a.cue().startsWith(CLAIM)).toList();
  }

  private String seal(String tag) {
    return ledger.lives().history(tag).stream()
        .filter(e -> e.kind().equals("sealed"))
        .reduce((a, b) -> b)
        .map(Happened::body)
        .map(
            b ->
                b.path("number").asText()
                    + (b.path("mark").asText().isEmpty() ? "" : ", " + b.path("mark").asText()))
        .orElse("");
  }

  private static Claiming.Found found(Dossier dossier, boolean here) {
    return new Claiming.Found(
        said(dossier, here, "identity", Identity.class, Identity.UNKNOWN),
        said(dossier, here, "seal", Seal.class, Seal.UNKNOWN),
        said(dossier, here, "cause", Cause.class, Cause.UNKNOWN),
        said(dossier, here, "coverage", Coverage.class, Coverage.UNKNOWN),
        said(dossier, here, "group", Group.class, Group.UNKNOWN));
  }

  private static <E extends Enum<E>> E said(
      Dossier dossier, boolean here, String name, Class<E> kind, E unknown) {
    return said(dossier).stream()
        .filter(a -> here && a.cue().equals(CLAIM + name))
        .reduce((a, b) -> b)
        .map(a -> Enum.valueOf(kind, a.answer()))
        .orElse(unknown);
  }
}
