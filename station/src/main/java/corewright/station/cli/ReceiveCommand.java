package corewright.station.cli;

import corewright.profiles.Grade;
import corewright.station.work.Answers;
import corewright.station.work.AnswersFile;
import corewright.station.work.Intake;
import corewright.station.work.Intake.Known;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Receives a core. */
@Command(
    name = "receive",
    mixinStandardHelpOptions = true,
    description = {
      "Receives a core and says which tag it gets; a tag that has left before begins its next"
          + " visit.",
      "Everything is given by --answers, or by the options for the label; what was seen can be"
          + " answered later."
    },
    footer = {
      "",
      "Examples:",
      "  corewright receive --answers core.json --grade B",
      "  corewright receive --family sd48 --serial 0698-114 --label 'SD 12/48 0698-B' --customer"
          + " 'Orrel Plant Hire'"
    })
final class ReceiveCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Option(names = "--tag", paramLabel = "TAG", description = "Its tag, if it has one already.")
  private @Nullable String tag;

  @Option(names = "--answers", paramLabel = "FILE", description = "What people saw of the core.")
  private @Nullable Path answers;

  @Option(names = "--family", paramLabel = "ID", description = "As sd48.")
  private String family = "";

  @Option(names = "--serial", paramLabel = "TEXT", description = "The maker's, exactly as read.")
  private String serial = "";

  @Option(names = "--label", paramLabel = "TEXT", description = "Exactly as read.")
  private String label = "";

  @Option(names = "--customer", paramLabel = "NAME", description = "Whose it is.")
  private String customer = "";

  @Option(
      names = "--mode",
      paramLabel = "MODE",
      defaultValue = "repair",
      description = "repair, 'test only', exchange or stock (${DEFAULT-VALUE})")
  private String mode = "";

  @Option(names = "--complaint", paramLabel = "TEXT", description = "The customer's words.")
  private String complaint = "";

  @Option(names = "--quote", paramLabel = "NUMBER", description = "The quote it comes under.")
  private @Nullable String quote;

  @Option(names = "--grade", description = "Condition: ${COMPLETION-CANDIDATES}")
  private @Nullable Grade grade;

  @Option(
      names = "--promised",
      paramLabel = "DATE",
      description = "Until when the customer shall have it back.")
  private @Nullable LocalDate promised;

  @Option(
      names = "--namesake",
      description = "Its serial is known here, and it is another unit all the same.")
  private boolean namesake;

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      Answers seen =
          answers != null
              ? AnswersFile.read(answers, workshop.catalogue()::family)
              : new Answers(step.by, received(), Map.of(), Map.of(), Map.of());
      if (tag == null && !namesake) {
        workshop.intake().known(seen.received().serial()).stream()
            .findFirst()
            .ifPresent(ReceiveCommand::refuse);
      }
      if (quote != null) {
        workshop.ledger().agreements().free(quote, tag == null ? "" : tag);
      }
      if (promised != null) {
        Intake.requireToCome(promised, workshop.today());
      }
      String given = workshop.arrival().receive(seen, Optional.ofNullable(tag));
      if (promised != null) {
        workshop.ledger().lives().promise(given, promised, step.by);
      }
      if (grade != null) {
        workshop.ledger().lives().grade(given, grade, grade.words(), step.by);
      }
      if (quote != null) {
        workshop.quotes().arrived(quote, given, step.by);
      }
      step.print(spec.commandLine().getOut(), workshop.ledger().lives().standing(given));
      return ExitCodes.DONE;
    }
  }

  private Answers.Received received() {
    if (family.isEmpty()) {
      throw new Refused(
          "Neither --answers nor --family says what is received", "Give --family, as sd48.");
    }
    Intake.requireMode(mode);
    return new Answers.Received(family, serial, label, customer, mode, complaint);
  }

  private static void refuse(Known known) {
    String tag = known.core().tag();
    throw new Refused(
        "Serial " + known.core().serial() + " is known: " + tag + ", " + known.stage().words(),
        known.canReturn()
            ? "Give --tag " + tag + " if it is that unit, --namesake if it is another one."
            : "Go on with " + tag + ", or give --namesake if it is another unit.");
  }
}
