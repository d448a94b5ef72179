package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.reports.ledger.Found;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Who else is at risk when a unit comes back. */
@Command(
    name = "siblings",
    mixinStandardHelpOptions = true,
    description = {
      "Lists the units that left and share something with this one's rebuild: a lot, the"
          + " technician, or bench and week of the final test."
    },
    footer = {"", "Example:", "  corewright siblings U-00004V --json"})
final class SiblingsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "TAG", description = "The unit that came back.")
  private String tag;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      String known = workshop.ledger().lives().standing(tag).tag();
      Map<String, List<Found>> shared = workshop.ledger().siblings(known);
      ObjectNode json = JsonNodeFactory.instance.objectNode();
      for (Map.Entry<String, List<Found>> by : shared.entrySet()) {
        json.set(by.getKey(), FindCommand.json(by.getValue()));
        if (!step.json) {
          out.println(by.getKey() + ": " + by.getValue().size() + " that left");
          by.getValue().forEach(f -> out.println("  " + f.tag() + "  serial " + f.serial()));
        }
      }
      if (step.json) {
        out.println(RecordJson.text(json));
      } else if (shared.isEmpty()) {
        out.println(
            "Nothing was fitted to " + known + " and it had no final test: it shares nothing.");
      }
      return ExitCodes.DONE;
    }
  }
}
