package corewright.station.cli;

import corewright.station.work.Paperwork;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Writes what leaves with a rebuilt unit. */
@Command(
    name = "warranty",
    mixinStandardHelpOptions = true,
    description = {
      "Writes the warranty report of a rebuilt unit: arrived against left, replaced, covered.",
      "Refused unless its last run is a test before shipping that came to PASS."
    },
    footer = {"", "Example:", "  corewright warranty U-00004V"})
final class WarrantyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private PaperOptions options;

  @Override
  public Integer call() throws Exception {
    return options.write(spec.commandLine(), Paperwork.WARRANTY_REPORT);
  }
}
