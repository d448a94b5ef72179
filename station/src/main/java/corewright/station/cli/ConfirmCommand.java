package corewright.station.cli;

import corewright.station.work.Workshop;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a teardown showed. */
@Command(
    name = "confirm",
    mixinStandardHelpOptions = true,
    description = "Notes which group a teardown showed to be at fault, beside what was expected.",
    footer = {
      "",
      "Example:",
      "  corewright confirm U-00004V 'output capacitors' --predicted 'power stage'"
    })
final class ConfirmCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(index = "0", paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Parameters(index = "1", paramLabel = "GROUP", description = "What was at fault.")
  private String group;

  @Option(
      names = "--predicted",
      paramLabel = "GROUP",
      description = "What was expected from outside.")
  private String predicted = "";

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      workshop.ledger().facts().confirm(tag, group, predicted, step.by);
      step.print(spec.commandLine().getOut(), workshop.ledger().lives().standing(tag));
      return ExitCodes.DONE;
    }
  }
}
