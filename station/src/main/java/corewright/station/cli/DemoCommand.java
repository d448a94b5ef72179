package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.run.Clock;
import corewright.bench.run.RunListener;
import corewright.profiles.Catalogue;
import corewright.station.demo.Demo;
import corewright.station.demo.DemoProgress;
import corewright.station.work.Folders;
import corewright.station.work.ShopFile;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Takes eight cores of a sample shop from the box to a decision and a document. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    description =
        "Takes eight cores of an invented shop from the box to a decision, a record and a document,"
            + " on an emulated bench behind serial ports. Nothing real is energised; every document"
            + " is a specimen.",
    footer = {
      "",
      "Examples:",
      "  corewright demo                  another folder each time",
      "  corewright demo --seed 7         the same units and the same samples each time"
    })
final class DemoCommand implements Callable<Integer> {
  /** Stands in the shop's folder as well: what is printed there later has the same head. */
  private static final Map<String, String> SHOP =
      Map.of(
          "name",
          "Alderbrook Module Works",
          "address",
          "12 Weir Street, Alderbrook",
          "contact",
          "bench@alderbrook.example",
          "complaints",
          "To object to a result, write to us within 30 days; we keep the unit unaltered until"
              + " then.",
          "invented",
          "true");

  @Spec private CommandSpec spec;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "What the units and all noise are drawn from (${DEFAULT-VALUE}).")
  private long seed;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where to put everything; must not be there yet (corewright-out/demo-N).")
  private @Nullable Path out;

  @Option(names = "--json", description = "Report as JSON on stdout.")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter stdout = spec.commandLine().getOut();
    Path folder = NewFolder.of(Optional.ofNullable(out), "demo");
    Clock clock = Clock.system();
    Folders.at(folder);
    ShopFile.write(folder, SHOP);
    try (StopKeys keys = new StopKeys();
        Workshop workshop =
            Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), "bench-1", clock)) {
      Demo.Result result =
          new Demo(workshop, clock, seed, new Lines(spec.commandLine().getErr())).run(keys.stop());
      if (json) {
        stdout.println(RecordJson.text(tree(folder, result)));
      } else {
        OutcomeTable.of(result.outcomes()).forEach(stdout::println);
        stdout.println();
        where(workshop, result, stdout);
      }
      return keys.stop().requested().isPresent() ? ExitCodes.REFUSED : ExitCodes.DONE;
    }
  }

  private static void where(Workshop workshop, Demo.Result result, PrintWriter stdout) {
    stdout.println("Ledger      " + workshop.folders().ledger().replace("jdbc:sqlite:", ""));
    stdout.println("Captures    " + workshop.folders().captures() + "  (HDF5)");
    stdout.println("Charts      " + workshop.folders().charts());
    stdout.println("Documents   " + workshop.folders().documents());
    result
        .warrantyReport()
        .ifPresent(file -> stdout.println("Rebuilt     " + file + "  (warranty report, specimen)"));
    String shop = workshop.folders().root().toString();
    stdout.println(
        "Look closer: corewright show TAG --shop "
            + (shop.contains(" ") ? "'" + shop + "'" : shop));
  }

  private ObjectNode tree(Path folder, Demo.Result result) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("seed", seed);
    json.put("folder", folder.toAbsolutePath().toString());
    ArrayNode cores = json.putArray("cores");
    result.outcomes().forEach(o -> cores.add(RecordJson.outcome(o)));
    json.put("warrantyReport", result.warrantyReport().map(Object::toString).orElse(null));
    return json;
  }

  /** Progress, one line a core. */
  private static final class Lines implements DemoProgress {
    private final PrintWriter err;
    private String head = "";

    Lines(PrintWriter err) {
      this.err = err;
    }

    @Override
    public void core(int index, int count, String tag, String family) {
      head = "[" + (index + 1) + "/" + count + "] " + tag + " " + family;
    }

    @Override
    public void rebuilt(String tag, String family) {
      head = "[rebuilt] " + tag + " " + family;
    }

    @Override
    public RunListener listener() {
      return new RunProgress(err, Terminal.here(), head);
    }
  }
}
