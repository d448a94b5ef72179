package corewright.station.cli;

import corewright.station.work.Intake;
import corewright.station.work.Workshop;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The day until which a customer shall have a unit back. */
@Command(
    name = "promise",
    mixinStandardHelpOptions = true,
    description = {
      "Notes the day until which the customer shall have a unit back. The last day said counts;"
          + " 'figures' tells how many were kept."
    },
    footer = {"", "Example:", "  corewright promise U-00004V --until 2026-12-04"})
final class PromiseCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Option(names = "--until", required = true, paramLabel = "DATE", description = "As 2026-12-04.")
  private LocalDate until = LocalDate.EPOCH;

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      Intake.requireToCome(until, workshop.today());
      workshop.ledger().lives().promise(tag, until, step.by);
      if (!step.json) {
        spec.commandLine().getOut().println("Promised for " + until);
      }
      step.print(spec.commandLine().getOut(), workshop.ledger().lives().standing(tag));
      return ExitCodes.DONE;
    }
  }
}
