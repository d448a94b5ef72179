package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.run.Clock;
import corewright.reports.ledger.Standing;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What every command that moves a unit through the shop takes, and how it answers. */
final class StepOptions {
  @Mixin private ShopFolder shop;

  @Option(
      names = "--by",
      paramLabel = "WHO",
      defaultValue = "${env:COREWRIGHT_BY:-${sys:user.name}}",
      description = "Who does it (${DEFAULT-VALUE}; or set COREWRIGHT_BY); kept in the ledger.")
  String by = "";

  @Option(names = "--json", description = "Report as JSON.")
  boolean json;

  Workshop open() {
    return open("counter");
  }

  /** Where something is written down about a bench, it stands in that bench's own chain. */
  Workshop open(String chain) {
    return open(chain, by);
  }

  /** The same for somebody who has confirmed something by name. */
  Workshop open(String chain, String who) {
    Workshop workshop = shop.open(chain, Clock.system());
    try {
      shop.signIn(workshop, who);
      return workshop;
    } catch (RuntimeException refused) {
      workshop.close();
      throw refused;
    }
  }

  void print(PrintWriter out, Standing standing) {
    out.println(json ? RecordJson.text(json(standing)) : line(standing));
  }

  void print(PrintWriter out, List<Standing> standings) {
    if (json) {
      ArrayNode list = JsonNodeFactory.instance.arrayNode();
      standings.forEach(s -> list.add(json(s)));
      out.println(RecordJson.text(list));
    } else {
      standings.forEach(s -> out.println(line(s)));
    }
  }

  static ObjectNode json(Standing standing) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("tag", standing.tag());
    json.put("visit", standing.visit());
    json.put("stage", standing.life().stage().words());
    json.put("since", standing.since());
    json.put("discharged", standing.life().safe());
    json.put("grade", standing.grade());
    json.put("question", standing.question());
    json.put("owner", standing.owner());
    json.put("due", standing.due().isEmpty() ? null : standing.due());
    return json;
  }

  static String line(Standing s) {
    return s.tag()
        + "  "
        + s.life().stage().words()
        + (s.grade().isEmpty() ? "" : "  grade " + s.grade())
        + (s.question().isEmpty()
            ? ""
            : "  open: " + s.question() + " (" + s.owner() + ", until " + s.due() + ")");
  }
}
