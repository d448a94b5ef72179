package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.life.Stage;
import corewright.reports.ledger.Standing;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What is in the shop, by stage; open questions with their dates. */
@Command(
    name = "board",
    mixinStandardHelpOptions = true,
    description =
        "Shows what is in the shop, by stage, and every open question: overdue ones first.",
    footer = {"", "Example:", "  corewright board --json"})
final class BoardCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    try (Workshop workshop = step.open()) {
      String today = workshop.today().toString();
      for (Stage stage : Stage.values()) {
        List<Standing> here = stage.inTheShop() ? workshop.ledger().lives().at(stage) : List.of();
        if (here.isEmpty()) {
          continue;
        }
        ArrayNode list = json.putArray(stage.words());
        if (!step.json) {
          out.println(stage.words() + ": " + here.size());
        }
        for (Standing s : here) {
          boolean late = !s.due().isEmpty() && s.due().compareTo(today) < 0;
          list.add(StepOptions.json(s).put("overdue", late));
          if (!step.json) {
            out.println(
                "  "
                    + (late ? "OVERDUE  " : "")
                    + StepOptions.line(s)
                    + "  for "
                    + workshop.daysSince(s.since())
                    + " d");
          }
        }
      }
    }
    if (step.json) {
      out.println(RecordJson.text(json));
    }
    return ExitCodes.DONE;
  }
}
