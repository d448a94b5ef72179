package corewright.station.cli;

import corewright.bench.run.Clock;
import corewright.reports.ledger.Amendment;
import corewright.station.work.Workshop;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adds something to a run that was closed. */
@Command(
    name = "amend",
    mixinStandardHelpOptions = true,
    description = "Adds a sentence to a closed run, beside it; the run itself is never changed.",
    footer = {
      "",
      "Example:",
      "  corewright amend bench-1-U-00418Q-arrival-1-7f3a --text 'Fixture F2 was used, not F1.'"
          + " --reason 'wrong barcode scanned' --who 'H. Oduya'"
    })
final class AmendCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopFolder shop;

  @Parameters(paramLabel = "RUN", description = "The run's id; 'show TAG --json' lists them.")
  private String run;

  @Option(names = "--text", required = true, description = "What is added or put right.")
  private String text = "";

  @Option(names = "--reason", required = true, description = "Why it was not so before.")
  private String reason = "";

  @Option(names = "--who", required = true, description = "Who answers for it.")
  private String who = "";

  @Override
  public Integer call() {
    try (Workshop workshop = shop.open("counter", Clock.system())) {
      Amendment made = workshop.ledger().amend(run, text, reason, who);
      spec.commandLine()
          .getOut()
          .println("Added to run " + made.run() + "; the run stays as it was signed.");
      return ExitCodes.DONE;
    }
  }
}
