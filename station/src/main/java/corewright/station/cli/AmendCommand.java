package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
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
          + " --reason 'wrong barcode scanned' --by 'H. Oduya'"
    })
final class AmendCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "RUN", description = "The run's id; 'show TAG --json' lists them.")
  private String run;

  @Option(names = "--text", required = true, description = "What is added or put right.")
  private String text = "";

  @Option(names = "--reason", required = true, description = "Why it was not so before.")
  private String reason = "";

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      Amendment made = workshop.ledger().runs().amend(run, text, reason, step.by);
      spec.commandLine()
          .getOut()
          .println(
              step.json
                  ? RecordJson.text(
                      JsonNodeFactory.instance
                          .objectNode()
                          .put("run", made.run())
                          .put("original", made.original()))
                  : "Added to run " + made.run() + "; the run stays as it was signed.");
      return ExitCodes.DONE;
    }
  }
}
