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

  /** Who answers for it: who wrote the answers, or who received the core. */
  String who(Workshop workshop, String received) {
    return workshop.ledger().dossier(received).core().receivedBy();
  }

  /** The tag of the unit, which is in the ledger afterwards. */
  String tag(Workshop workshop) {
    Optional<String> given = Optional.ofNullable(tag);
    if (answers != null) {
      Answers read = AnswersFile.read(answers, workshop.catalogue()::family);
      return workshop.reception().receive(read, given);
    }
    if (given.isEmpty()) {
      throw new Refused(
          "Neither a tag nor answers say which unit this is",
          "Name a unit with --tag, or receive a new one with --answers.");
    }
    return workshop.ledger().dossier(given.get()).core().tag();
  }
}
