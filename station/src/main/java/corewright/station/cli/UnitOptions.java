package corewright.station.cli;

import corewright.station.work.Answers;
import corewright.station.work.AnswersFile;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which unit is meant: one that was received before, or one that comes with its answers. */
final class UnitOptions {
  @Option(
      names = "--tag",
      paramLabel = "TAG",
      description = "The unit's tag. Without it the next free one is taken.")
  @Nullable String tag;

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description =
          "What people saw of the core; receives it. 'corewright answers FAMILY' prints one to fill"
              + " in.")
  @Nullable Path answers;

  boolean isNamed() {
    return tag != null || answers != null;
  }

  /** Who answers for it: who wrote the answers, or who received the core. Receives nothing. */
  String who(Workshop workshop) {
    return answers == null
        ? workshop.ledger().dossier(named()).core().receivedBy()
        : read(answers, workshop).who();
  }

  /** The family of the unit; receives nothing. */
  String family(Workshop workshop) {
    return answers == null
        ? workshop.ledger().dossier(named()).core().family()
        : read(answers, workshop).received().family();
  }

  private static Answers read(Path answers, Workshop workshop) {
    return AnswersFile.read(answers, workshop.catalogue()::family);
  }

  private String named() {
    if (tag == null) {
      throw new Refused(
          "Neither a tag nor answers say which unit this is",
          "Name a unit with --tag, or receive a new one with --answers.");
    }
    return tag;
  }

  /** The tag of the unit, which is in the ledger afterwards: not before somebody has signed in. */
  String tag(Workshop workshop) {
    return answers == null
        ? workshop.ledger().dossier(named()).core().tag()
        : workshop.reception().receive(read(answers, workshop), Optional.ofNullable(tag));
  }
}
