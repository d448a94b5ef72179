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
      "With --customer, the visits for that customer and nothing of anybody else.",
      "What looks like the number of a vehicle (17 characters, ISO 3779) is left out, in tables,"
          + " events and texts that were attached; LEFT-OUT says where."
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

  @Option(
      names = "--with-vehicles",
      description = "Also what looks like the number of a vehicle; the owner's, and written down.")
  private boolean vehicles;

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
                  vehicles,
                  step.by);
      if (step.json) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("folder", made.folder().toString());
        json.put("files", made.files());
        made.heads().forEach(head -> json.withArray("heads").add(head.toString()));
        made.missing().forEach(json.putArray("missing")::add);
        made.leftOut().forEach(json.putArray("leftOut")::add);
        to.println(RecordJson.text(json));
      } else {
        to.println(made.files() + " files in " + made.folder());
        to.println("Check them with 'sha256sum -c " + Exporting.HASHES + "' in that folder.");
        made.heads().forEach(head -> to.println("Record up to " + head.printed()));
        if (!made.leftOut().isEmpty()) {
          to.println(
              "Numbers of vehicles were left out in "
                  + made.leftOut().size()
                  + " places; "
                  + Exporting.LEFT_OUT
                  + " names them.");
        }
        made.missing().forEach(lost -> to.println("MISSING on the disk: " + lost));
      }
      return ExitCodes.DONE;
    }
  }
}
