package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.reports.ledger.Head;
import corewright.reports.ledger.Verification;
import corewright.station.work.RestoredShop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A backup taken apart again. */
@Command(
    name = "restore",
    mixinStandardHelpOptions = true,
    description = {
      "Restores a backup into a new folder: every hash and the whole ledger are checked first."
          + " Backups of older versions are brought up to date when the folder is opened."
    },
    footer = {"", "Example:", "  corewright restore 2026-11-26.zip --to shop-restored"})
final class RestoreCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "What 'backup' wrote.")
  private Path file;

  @Option(names = "--to", required = true, paramLabel = "FOLDER", description = "A new folder.")
  private Path folder = Path.of("");

  @Option(
      names = "--head",
      paramLabel = "HEAD",
      description = "As it was written down beside the backup; may be given again.")
  private List<String> heads = new ArrayList<>();

  @Option(names = "--json", description = "Report as JSON.")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    Verification found = RestoredShop.restore(file, folder, heads.stream().map(Head::of).toList());
    out.println(
        json
            ? RecordJson.text(
                JsonNodeFactory.instance
                    .objectNode()
                    .put("folder", folder.toString())
                    .put("events", found.events())
                    .put("signed", found.signed()))
            : found.events() + " events restored to " + folder + ", whole");
    return ExitCodes.DONE;
  }
}
