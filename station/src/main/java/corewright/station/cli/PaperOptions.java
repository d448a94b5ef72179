package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.Dossier;
import corewright.bench.run.Clock;
import corewright.station.work.Paperwork;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command that writes paper about a unit takes, and what it says afterwards. */
final class PaperOptions {
  private static final int LATEST = Integer.MAX_VALUE;

  @Mixin private ShopFolder shop;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Option(
      names = "--visit",
      paramLabel = "N",
      description = "About which visit of the unit, counted from 1; else its latest.")
  private int visit = LATEST;

  @Option(
      names = "--by",
      paramLabel = "WHO",
      defaultValue = "${env:COREWRIGHT_BY:-${sys:user.name}}",
      description = "Who writes it (${DEFAULT-VALUE}; or set COREWRIGHT_BY); kept in the ledger.")
  private String by = "";

  @Option(names = "--json", description = "Report as JSON.")
  private boolean json;

  /** Writes the paper and says where it lies. */
  int write(CommandLine line, Paperwork paper) throws Exception {
    try (Workshop workshop = shop.open("paper", Clock.system())) {
      shop.signIn(workshop, by);
      Dossier dossier = workshop.ledger().dossier(tag, visit);
      if (visit != LATEST && dossier.visit() != visit) {
        throw new Refused(
            dossier.core().tag() + " has had " + dossier.visit() + " visits, and not " + visit,
            "Leave --visit out for the latest.");
      }
      List<String> cautions = workshop.publishing().cautions(dossier);
      cautions.forEach(caution -> line.getErr().println("caution: " + caution));
      line.getErr().flush();
      Path file = workshop.publishing().write(paper, dossier, by);
      line.getOut().println(json ? json(dossier, paper, file, cautions) : file.toString());
      return ExitCodes.DONE;
    }
  }

  private static String json(Dossier dossier, Paperwork paper, Path file, List<String> cautions) {
    ObjectNode json =
        JsonNodeFactory.instance
            .objectNode()
            .put("tag", dossier.core().tag())
            .put("kind", paper.kind())
            .put("document", file.toString());
    ArrayNode list = json.putArray("cautions");
    cautions.forEach(list::add);
    return RecordJson.text(json);
  }
}
