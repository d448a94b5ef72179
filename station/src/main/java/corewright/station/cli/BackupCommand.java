package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.station.work.Backup;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One file with the whole shop. */
@Command(
    name = "backup",
    mixinStandardHelpOptions = true,
    description = {
      "Writes the whole shop into one zip file while everybody goes on working, and checks it"
          + " before it gets its name. The signing key is not in it: keep a copy of that"
          + " elsewhere.",
      "Write the heads down beside it: they prove later that nothing was cut off."
    },
    footer = {"", "Example:", "  corewright backup /media/usb/2026-11-26.zip"})
final class BackupCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "FILE", description = "A new file.")
  private Path file;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      Backup.Made made = workshop.backup().make(file, step.by);
      if (step.json) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("file", made.file().toString());
        json.put("bytes", made.bytes());
        json.put("events", made.verification().events());
        made.verification().heads().forEach(h -> json.withArray("heads").add(h.toString()));
        out.println(RecordJson.text(json));
      } else {
        out.println(made.file() + ", " + made.bytes() + " bytes, checked");
        made.verification().heads().forEach(h -> out.println("Record up to " + h.printed()));
      }
      return ExitCodes.DONE;
    }
  }
}
