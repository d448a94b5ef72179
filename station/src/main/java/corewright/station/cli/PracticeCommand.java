package corewright.station.cli;

import corewright.station.demo.PracticeBench;
import corewright.station.work.Home;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Opens an emulated bench to practise on, until Enter is pressed. */
@Command(
    name = "practice",
    mixinStandardHelpOptions = true,
    description =
        "Opens an emulated bench with a healthy unit on it, to practise 'run' on. Nothing real is"
            + " energised, and every document is a specimen.",
    footer = {
      "",
      "Examples:",
      "  corewright practice sd48 --out practice.json",
      "  corewright run --bench practice.json --profile sd48-arrival --answers core.json"
    })
final class PracticeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FAMILY", defaultValue = "sd48", description = "As sd48.")
  private String family;

  @Option(names = "--seed", defaultValue = "1", description = "Of the unit and all noise.")
  private long seed;

  @Option(
      names = "--plug",
      paramLabel = "Ω",
      description = "A resistor in the place of the unit; 0.005 is a link, for 'condition'.")
  private @Nullable Double plug;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      defaultValue = "practice-bench.json",
      description = "Where to write the bench's description (${DEFAULT-VALUE}).")
  private Path out = Path.of("practice-bench.json");

  @Override
  public Integer call() throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    try (PracticeBench bench =
        PracticeBench.open(Home.fromSystem(), family, seed, Optional.ofNullable(plug), out)) {
      err.println("The emulated bench is open; its description is " + bench.description() + ".");
      err.println("Run something on it from another terminal. Press Enter here to close it.");
      err.flush();
      if (System.in.read() < 0) {
        err.println("There is nobody to press Enter, so it closes.");
      }
    }
    return ExitCodes.DONE;
  }
}
