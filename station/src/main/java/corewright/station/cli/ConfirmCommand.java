package corewright.station.cli;

import corewright.bench.diagnose.Group;
import corewright.station.work.Workshop;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
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
    description =
        "Notes which group a teardown showed to be at fault, beside what was expected. The next"
            + " diagnosis reckons with it.",
    footer = {
      "",
      "Example:",
      "  corewright confirm U-00004V 'output esr' --predicted 'power stage weak'"
    })
final class ConfirmCommand implements Callable<Integer> {
  private static final String NO_GROUP =
      "Noted. It counts for no group of the diagnosis; those are: "
          + Arrays.stream(Group.values())
              .map(g -> g.name().toLowerCase(Locale.ROOT).replace('_', ' '))
              .collect(Collectors.joining(", "))
          + ".";

  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(index = "0", paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Parameters(index = "1", paramLabel = "GROUP", description = "What was at fault.")
  private String group;

  @Option(
      names = "--predicted",
      paramLabel = "GROUP",
      description = "What was expected from outside; without it, what the last decision named.")
  private String predicted = "";

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      if (workshop.teardowns().confirm(tag, group, predicted, step.by).isEmpty()) {
        spec.commandLine().getErr().println(NO_GROUP);
      }
      step.print(spec.commandLine().getOut(), workshop.ledger().lives().standing(tag));
      return ExitCodes.DONE;
    }
  }
}
