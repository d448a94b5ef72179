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

/** Writes down that a unit was discharged by hand, and what it read afterwards. */
@Command(
    name = "safe",
    mixinStandardHelpOptions = true,
    description = {
      "Notes that a unit was discharged through its resistor and read again after ten seconds.",
      "A run on the bench does this by itself."
    },
    footer = {"", "Example:", "  corewright safe U-00004V --volts 1.2"})
final class SafeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Option(
      names = "--volts",
      required = true,
      paramLabel = "V",
      description = "What the output still held when it was read again.")
  private double volts;

  @Option(names = "--note", paramLabel = "TEXT", description = "Meter, resistor, anything odd.")
  private String note = "";

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      step.print(
          spec.commandLine().getOut(),
          workshop.ledger().lives().take(tag, new Step.Safe(volts, note), step.by));
      return ExitCodes.DONE;
    }
  }
}
