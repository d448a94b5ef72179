package corewright.station.cli;

import corewright.reports.ledger.Found;
import corewright.station.work.Answers;
import corewright.station.work.AnswersFile;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which unit somebody stands at, and who that is. */
final class PersonAtUnit {
  private static final String QUESTION = "Who is looking? (or --by NAME)";

  @Parameters(
      arity = "0..1",
      paramLabel = "TAG",
      description =
          "The unit's tag, or its serial. Without it a new core is received and gets the next free"
              + " tag.")
  @Nullable String tag;

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description =
          "What people saw, from a file; 'corewright answers FAMILY' prints one to fill in."
              + " Receives the core if its tag is not known yet.")
  @Nullable Path answers;

  @Option(
      names = "--by",
      paramLabel = "NAME",
      defaultValue = "${env:COREWRIGHT_BY}",
      description = "Who is looking (or set COREWRIGHT_BY); asked for where it is not given.")
  @Nullable String who;

  /** Whether there is anything to ask: a file has answered already. */
  boolean asks() {
    return answers == null;
  }

  /** The tag of the unit, which is in the record afterwards. */
  String unit(Workshop workshop, Asking asking, boolean silent) {
    if (answers != null) {
      Answers read = AnswersFile.read(answers, workshop.catalogue()::family);
      Optional<String> known = known(workshop);
      if (known.isPresent()) {
        workshop.reception().add(known.get(), read);
        return known.get();
      }
      return workshop.arrival().receive(read, Optional.ofNullable(tag));
    }
    if (tag == null) {
      if (silent) {
        throw new Refused("No unit is named", "Name its tag, or give --answers FILE.");
      }
      Answers asked = new ReceiveTalk(asking, workshop.catalogue()).ask(name(asking));
      return workshop.arrival().receive(asked, Optional.empty());
    }
    return known(workshop)
        .orElseThrow(
            () ->
                new Refused(
                    "There is no unit " + tag,
                    "Receive it with --answers FILE, or leave the tag out and be asked."));
  }

  /** Who is looking; empty where nobody is there to be asked. */
  Optional<String> somebody(Asking asking) {
    String name = who == null || who.isBlank() ? asking.typed(QUESTION) : who;
    if (asking.ended()) {
      return Optional.empty();
    }
    who = name;
    return Optional.of(name(asking));
  }

  private String name(Asking asking) {
    if (who == null || who.isBlank()) {
      String typed = asking.typed(QUESTION);
      if (typed.isBlank() || typed.equals(".")) {
        throw new Refused(
            "Nobody said who is looking, so nothing was asked",
            "Type your name, or give it with --by NAME.");
      }
      who = typed;
    }
    return PersonName.of(who, "--by");
  }

  private Optional<String> known(Workshop workshop) {
    if (tag == null) {
      return Optional.empty();
    }
    if (workshop.ledger().knows(tag)) {
      return Optional.of(workshop.ledger().dossier(tag).core().tag());
    }
    List<Found> found =
        workshop.ledger().find(tag).stream().filter(f -> f.why().equals("serial")).toList();
    return found.size() == 1 ? Optional.of(found.get(0).tag()) : Optional.empty();
  }
}
