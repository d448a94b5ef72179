package corewright.station.cli;

import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.station.cli.Asking.Kind;
import corewright.station.cli.Asking.Question;
import corewright.station.cli.Asking.Reply;
import corewright.station.work.Answers;
import corewright.station.work.Refused;
import java.util.List;
import java.util.Map;

/** Asks what is written on a core tag, for a core that has none yet. */
final class ReceiveTalk {
  private final Asking asking;
  private final Catalogue catalogue;

  ReceiveTalk(Asking asking, Catalogue catalogue) {
    this.asking = asking;
    this.catalogue = catalogue;
  }

  /**
   * A core without answers yet.
   *
   * @throws Refused if nobody says what it is
   */
  Answers ask(String who) {
    List<Family> families = catalogue.families();
    String family =
        chosen(
            "A new core. Of which family is it?",
            families.stream().map(f -> f.id() + ", " + f.title()).toList());
    String mode =
        chosen("How does it come in?", List.of("repair", "test only", "exchange", "stock"));
    String serial = asked("The maker's serial, exactly as it stands (Enter if there is none):");
    String label = asked("The label, exactly as it stands:");
    String customer = asked("Whose is it?");
    String complaint = asked("The customer's own words:");
    return new Answers(
        who,
        new Answers.Received(
            family.substring(0, family.indexOf(',')), serial, label, customer, mode, complaint),
        Map.of(),
        Map.of(),
        Map.of());
  }

  private String chosen(String question, List<String> choices) {
    Reply reply =
        asking.ask(
            new Question(
                List.of(question), choices, List.of("Without it nothing can be received.")));
    if (reply.kind() != Kind.ANSWER) {
      throw new Refused(
          "Nothing was received", "Start again, or receive a core with --answers FILE.");
    }
    return reply.text();
  }

  private String asked(String prompt) {
    String typed = asking.typed(prompt);
    return typed.equals(".") ? "" : typed;
  }
}
