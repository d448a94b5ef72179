package corewright.station.cli;

import corewright.station.work.Paperwork;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes sheets that people work by. */
@Command(
    name = "sheet",
    mixinStandardHelpOptions = true,
    description = "Writes a sheet to work by: for the rebuild, for fitting, for the hidden mark.",
    footer = {
      "",
      "Examples:",
      "  corewright sheet U-00004V --for rebuild   goes with the unit through its rebuild",
      "  corewright sheet U-00004V --for fitting   goes to whoever fits it",
      "  corewright sheet U-00004V --for mark      stays in the shop"
    })
final class SheetCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private PaperOptions options;

  @Option(
      names = "--for",
      required = true,
      paramLabel = "WORK",
      description = "What it is for: ${COMPLETION-CANDIDATES}.")
  private Work work = Work.rebuild;

  /** What a sheet is for, as it is typed. */
  private enum Work {
    rebuild,
    fitting,
    mark
  }

  @Override
  public Integer call() throws Exception {
    return options.write(
        spec.commandLine(),
        switch (work) {
          case rebuild -> Paperwork.TRAVELLER;
          case fitting -> Paperwork.INSTALL_SHEET;
          case mark -> Paperwork.MARK_SHEET;
        });
  }
}
