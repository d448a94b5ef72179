package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.reports.ledger.Happened;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Everything that was written down about a unit, or about a lot. */
@Command(
    name = "history",
    mixinStandardHelpOptions = true,
    description = "Lists every event of a unit on all its visits, or of a lot: when, who, what.",
    footer = {"", "Example:", "  corewright history U-00004V"})
final class HistoryCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "TAG", description = "The unit's tag, or a lot.")
  private String tag;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      List<Happened> history = workshop.ledger().lives().history(tag);
      if (step.json) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (Happened h : history) {
          list.addObject()
              .put("at", h.at())
              .put("kind", h.kind())
              .put("by", h.who())
              .put("event", h.head().toString())
              .set("body", h.body());
        }
        out.println(RecordJson.text(list));
      } else {
        WallTime time = new WallTime(workshop.zone());
        history.forEach(
            h -> out.println(time.words(Instant.parse(h.at())) + "  " + h.kind() + "  " + h.who()));
      }
      return ExitCodes.DONE;
    }
  }
}
