package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.profiles.Catalogue;
import corewright.profiles.Profile;
import corewright.station.work.Home;
import corewright.station.work.Playback;
import corewright.station.work.Playback.Played;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plays a wire log back, to find out without the bench what went wrong on it. */
@Command(
    name = "playback",
    mixinStandardHelpOptions = true,
    description = {
      "Plays the wire log of a run back through the drivers and the engine: they get the bytes and"
          + " the times of then, and do what they did. No port is opened, no unit is energised, and"
          + " nothing gets into the record.",
      "A program, bench or profile that does something else than then is told the first byte that"
          + " differs."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  corewright run --bench bench-1.json --profile sd48-ship --tag U-000012 --wire-log",
      "  corewright playback our-shop/captures/bench-1-U-000012-ship-1-7f3a.wire --bench"
          + " bench-1.json --profile sd48-ship",
    })
final class PlaybackCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The wire log, beside the run's capture.")
  private Path wire = Path.of("");

  @Option(
      names = "--bench",
      required = true,
      paramLabel = "FILE",
      description = "The bench, as it was then.")
  private Path bench = Path.of("");

  @Option(
      names = "--profile",
      required = true,
      paramLabel = "ID",
      description = "What was run, as it was then.")
  private String profile = "";

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "A new folder for its samples, for 'measure' (corewright-out/playback-1, …).")
  private @Nullable Path out;

  @Option(names = "--json", description = "Report as JSON on stdout.")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    BenchDescription description = Descriptions.bench(bench);
    Catalogue catalogue = Catalogue.ofHome();
    Profile chosen = catalogue.profile(profile);
    Path folder = NewFolder.of(Optional.ofNullable(out), "playback");
    Played played =
        new Playback(catalogue, Home.fromSystem(), Clock.system())
            .play(
                wire, description, bench, chosen, folder, new AskedAtTerminal("played back", err));
    PrintWriter print = spec.commandLine().getOut();
    if (json) {
      print.println(RecordJson.text(json(played)));
    } else {
      words(played).forEach(print::println);
    }
    return !played.astray() && played.left() == 0 ? ExitCodes.DONE : ExitCodes.REFUSED;
  }

  private static List<String> words(Played played) {
    List<String> words = new ArrayList<>();
    words.add("PLAYED BACK: no bench was there, and nothing is said about a unit.");
    words.add(
        (played.end().kind() + ": " + played.end().saw() + " " + played.end().remedy()).strip());
    if (played.left() > 0) {
      words.add(
          played.left()
              + " events of the log were not come to: this program, bench or profile does something"
              + " else than then.");
    } else {
      words.add(
          played.astray()
              ? "All of the log was played. It ends before the run does: nothing of it was closed."
              : "All of the log was played.");
    }
    if (!played.astray()) {
      words.addAll(played.troubles());
    }
    played
        .same()
        .ifPresent(
            same ->
                words.add(
                    same
                        ? "Its samples are those of the capture beside the log, to the last byte."
                        : "Its samples are NOT those of the capture beside the log."));
    played.raw().ifPresent(raw -> words.add("Samples     " + raw));
    return words;
  }

  private static ObjectNode json(Played played) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("end", played.end().kind().name());
    json.put("saw", played.end().saw());
    json.put("remedy", played.end().remedy());
    played.troubles().forEach(json.putArray("troubles")::add);
    json.put("astray", played.astray()).put("left", played.left());
    json.put("same", played.same().orElse(null));
    json.put("samples", played.raw().map(Path::toString).orElse(null));
    return json;
  }
}
