package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.bench.run.Clock;
import corewright.station.work.Paperwork;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command that writes paper about a unit takes, and what it says afterwards. */
final class PaperOptions {
  @Mixin private ShopFolder shop;

  @Parameters(paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Option(
      names = "--by",
      paramLabel = "WHO",
      defaultValue = "${sys:user.name}",
      description = "Who writes it (${DEFAULT-VALUE}); kept in the ledger.")
  private String by = "";

  @Option(names = "--json", description = "Report as JSON.")
  private boolean json;

  /** Writes the paper and says where it lies. */
  int write(PrintWriter out, Paperwork paper) throws Exception {
    try (Workshop workshop = shop.open("paper", Clock.system())) {
      String full = workshop.ledger().dossier(tag).core().tag();
      Path file = workshop.publishing().write(paper, full, by);
      out.println(
          json
              ? RecordJson.text(
                  JsonNodeFactory.instance
                      .objectNode()
                      .put("tag", full)
                      .put("kind", paper.kind())
                      .put("document", file.toString()))
              : file.toString());
      return ExitCodes.DONE;
    }
  }
}
