package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.station.work.Exporting;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Gets everything out. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = {
      "Writes everything into a new folder: each table, and every event with its signature, as CSV"
          + " that no spreadsheet runs, as JSON and as HDF5; captures as HDF5; and the hash of each"
          + " file.",
      "With --customer, the visits for that customer and nothing of anybody else."
    },
    footer = {
      "",
      "Examples:",
      "  corewright export",
      "  corewright export --customer 'Orrel Plant Hire'"
    })
final class ExportCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Option(names = "--out", paramLabel = "FOLDER", description = "A new folder.")
  private @Nullable Path out;

  @Option(names = "--customer", paramLabel = "NAME", description = "Name or code.")
  private @Nullable String customer;

  @Override
  public Integer call() {
    PrintWriter to = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      Exporting.Exported made =
          workshop
              .exporting()
              .write(
                  NewFolder.of(Optional.ofNullable(out), "export"),
                  Optional.ofNullable(customer),
                  step.by);
      if (step.json) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("folder", made.folder().toString());
        json.put("files", made.files());
        made.heads().forEach(head -> json.withArray("heads").add(head.toString()));
        made.missing().forEach(json.putArray("missing")::add);
        to.println(RecordJson.text(json));
      } else {
        to.println(made.files() + " files in " + made.folder());
        to.println("Check them with 'sha256sum -c " + Exporting.HASHES + "' in that folder.");
        made.heads().forEach(head -> to.println("Record up to " + head.printed()));
        made.missing().forEach(lost -> to.println("MISSING on the disk: " + lost));
      }
      return ExitCodes.DONE;
    }
  }
}
