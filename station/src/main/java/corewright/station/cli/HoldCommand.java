package corewright.station.cli;

import corewright.reports.ledger.Step;
import corewright.station.work.Workshop;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts a unit on hold: a question, its owner, and until when. */
@Command(
    name = "hold",
    mixinStandardHelpOptions = true,
    description = "Makes a unit PENDING: which question is open, whose it is, and until when.",
    footer = {
      "",
      "Example:",
      "  corewright hold U-00004V --question 'Does the customer agree to an exchange?' --owner"
          + " counter --due 2026-12-03"
    })
final class HoldCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Option(names = "--question", required = true, description = "What would release it.")
  private String question = "";

  @Option(names = "--owner", required = true, description = "Whose question it is.")
  private String owner = "";

  @Option(names = "--due", required = true, paramLabel = "DATE", description = "As 2026-12-03.")
  private LocalDate due = LocalDate.EPOCH;

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      step.print(
          spec.commandLine().getOut(),
          workshop.ledger().lives().take(tag, new Step.Hold(question, owner, due), step.by));
      return ExitCodes.DONE;
    }
  }
}
