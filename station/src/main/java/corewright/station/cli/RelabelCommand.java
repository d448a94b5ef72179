package corewright.station.cli;

import corewright.station.work.Workshop;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says that a serial or a label is another one than was written down. */
@Command(
    name = "relabel",
    mixinStandardHelpOptions = true,
    description = {
      "Says that a unit's serial or label is another one than was written down: misread, or"
          + " exchanged since. What stood there before stays in the record, and both are printed"
          + " with the reason."
    },
    footer = {
      "",
      "Example:",
      "  corewright relabel U-00004V --serial 0698-141 --because 'two digits were swapped when it"
          + " came in'"
    })
final class RelabelCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Option(names = "--serial", paramLabel = "TEXT", description = "As it stands on the unit.")
  private String serial = "";

  @Option(names = "--label", paramLabel = "TEXT", description = "As it stands on the unit.")
  private String label = "";

  @Option(names = "--because", required = true, description = "Why it is another one.")
  private String reason = "";

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      workshop.ledger().lives().relabel(tag, serial, label, reason, step.by);
      step.print(spec.commandLine().getOut(), workshop.ledger().lives().standing(tag));
      return ExitCodes.DONE;
    }
  }
}
