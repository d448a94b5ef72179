package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.reports.ledger.Stores;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The store of parts by lot. */
@Command(
    name = "lot",
    mixinStandardHelpOptions = true,
    description = "Takes a lot of parts into store, or lists what is there.",
    footer = {
      "",
      "Examples:",
      "  corewright lot",
      "  corewright lot LOT-7 --part '2200 uF 63 V' --quantity 40 --supplier 'Parts Ltd'"
          + " --date-code 2608"
    })
final class LotCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(paramLabel = "LOT", arity = "0..1", description = "Name of a new lot.")
  private @Nullable String lot;

  @Option(names = "--part", paramLabel = "PART", description = "What it holds.")
  private String part = "";

  @Option(names = "--quantity", paramLabel = "N", description = "How many came.")
  private int quantity;

  @Option(names = "--supplier", paramLabel = "NAME", description = "From whom.")
  private String supplier = "";

  @Option(names = "--date-code", paramLabel = "CODE", description = "As printed on the parts.")
  private String dateCode = "";

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      Stores stores = workshop.ledger().stores();
      if (lot != null) {
        stores.take(new Stores.Lot(lot, part, quantity, quantity, supplier, dateCode), step.by);
      } else if (!part.isEmpty()) {
        throw new Refused(
            "A lot without a name", "Give the lot's name first: 'lot LOT-7 --part …'.");
      }
      List<Stores.Lot> lots = stores.lots();
      if (step.json) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        lots.forEach(
            l ->
                list.addObject()
                    .put("lot", l.lot())
                    .put("part", l.part())
                    .put("quantity", l.quantity())
                    .put("remaining", l.remaining())
                    .put("supplier", l.supplier())
                    .put("dateCode", l.dateCode()));
        out.println(RecordJson.text(list));
      } else {
        lots.forEach(
            l ->
                out.println(
                    l.lot() + "  " + l.part() + "  " + l.remaining() + " of " + l.quantity()));
      }
      return ExitCodes.DONE;
    }
  }
}
