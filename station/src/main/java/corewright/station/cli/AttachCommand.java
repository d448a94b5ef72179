package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import corewright.reports.ledger.Attached;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keeps photographs and files of a unit under their hash. */
@Command(
    name = "attach",
    mixinStandardHelpOptions = true,
    description =
        "Keeps copies of photographs or files of a unit, and notes their hashes in the ledger.",
    footer = {"", "Example:", "  corewright attach U-00004V label.jpg --note 'label as received'"})
final class AttachCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Parameters(index = "0", paramLabel = "TAG", description = "The unit's tag.")
  private String tag;

  @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "What to keep.")
  private List<Path> files;

  @Option(
      names = "--kind",
      paramLabel = "WORD",
      defaultValue = "photo",
      description = "photo, log, letter … (${DEFAULT-VALUE})")
  private String kind = "";

  @Option(names = "--note", paramLabel = "TEXT", description = "What it shows.")
  private String note = "";

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      List<Attached> kept = new ArrayList<>();
      for (Path file : files) {
        kept.add(workshop.files().attach(tag, file, kind, note, step.by));
      }
      ArrayNode list = JsonNodeFactory.instance.arrayNode();
      kept.forEach(a -> list.addObject().put("name", a.name()).put("sha256", a.sha256()));
      if (step.json) {
        out.println(RecordJson.text(list));
      } else {
        kept.forEach(a -> out.println(a.sha256() + "  " + a.name()));
      }
      return ExitCodes.DONE;
    }
  }
}
