package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.reports.ledger.Verification;
import corewright.station.work.Workshop;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** From one bench to several. */
@Command(
    name = "share",
    mixinStandardHelpOptions = true,
    description = {
      "Moves the ledger from its file into a database that several benches share (PostgreSQL 14 or"
          + " newer, encoding UTF8), checks every event there, and opens it there from then on. The"
          + " old file stays and refuses every further event.",
      "The database must be there and empty; the password stands in the file .pgpass. Every bench"
          + " has a shop folder with the same line in ledger.url; captures and documents are found"
          + " by all where the folder lies on a disk that they share. Back into a file: backup and"
          + " restore."
    },
    footer = {
      "",
      "Example:",
      "  corewright share 'jdbc:postgresql://records.lan/corewright?user=shop'"
    })
final class ShareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "URL", description = "As jdbc:postgresql://HOST/DATABASE?user=NAME")
  private String url = "";

  @Override
  public Integer call() {
    try (Workshop workshop = step.open()) {
      Verification found = workshop.sharing().share(url, step.by);
      spec.commandLine()
          .getOut()
          .println(
              step.json
                  ? RecordJson.text(
                      JsonNodeFactory.instance
                          .objectNode()
                          .put("events", found.events())
                          .put("signed", found.signed()))
                  : found.events()
                      + " events moved, whole; the ledger is opened there from now on");
      return ExitCodes.DONE;
    }
  }
}
