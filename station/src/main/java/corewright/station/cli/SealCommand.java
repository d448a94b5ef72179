package corewright.station.cli;

import corewright.reports.ledger.Step;
import corewright.station.work.Workshop;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Seals a unit that passed its final test. */
@Command(
    name = "seal",
    mixinStandardHelpOptions = true,
    description =
        "Seals a unit. Refused without a final test since it was last open; each number once.",
    footer = {"", "Example:", "  corewright seal U-00004V 8120 --mark 'UV dot under rib 3'"})
final class SealCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(index = "0", paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Parameters(index = "1", paramLabel = "NUMBER", description = "The number on the seal.")
  private String number;

  @Option(
      names = "--mark",
      paramLabel = "TEXT",
      description = "The hidden mark; not for customers.")
  private String mark = "";

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      step.print(
          spec.commandLine().getOut(),
          workshop.ledger().lives().take(tag, new Step.Sealing(number.strip(), mark), step.by));
      return ExitCodes.DONE;
    }
  }
}
