package corewright.station.cli;

import corewright.station.work.OpenToday;
import corewright.station.work.ShopFigures;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The owner's figures. */
@Command(
    name = "figures",
    mixinStandardHelpOptions = true,
    description = {
      "Counts the record: yield, first-pass yield, no fault found and in which air it was looked"
          + " for, promises kept, suppliers, confirmed faults and"
          + " what was expected of them, returns by ship month, survival (Kaplan and Meier),"
          + " Weibull, turnaround; work in progress, days of cover, open"
          + " questions and deposits as of today. Each with n and its 95"
          + " %% interval; --json and the CSV of --charts name the tags behind every number."
    },
    footer = {
      "",
      "Examples:",
      "  corewright figures",
      "  corewright figures --charts november --as pdf",
      "  corewright figures --from 2026-01-01 --until 2026-06-30 --shipped --json"
    })
final class FiguresCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Option(names = "--from", paramLabel = "DATE", description = "First day that counts.")
  private @Nullable LocalDate from;

  @Option(names = "--until", paramLabel = "DATE", description = "Last day that counts.")
  private @Nullable LocalDate until;

  @Option(names = "--shipped", description = "The days are those of shipment, not of reception.")
  private boolean shipped;

  @Option(
      names = "--charts",
      paramLabel = "FOLDER",
      description = "A new folder for a picture of each figure, and its data beside it as CSV.")
  private @Nullable Path charts;

  @Option(
      names = "--as",
      paramLabel = "KIND",
      defaultValue = "svg",
      description = "Of the pictures: ${COMPLETION-CANDIDATES} (${DEFAULT-VALUE})")
  private FigureFolder.Kind as = FigureFolder.Kind.svg;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      ShopFigures figures =
          workshop.figures(
              new ShopFigures.Period(
                  Optional.ofNullable(from), Optional.ofNullable(until), shipped));
      OpenToday open = workshop.openToday();
      if (charts != null) {
        new FiguresFiles(new FigureFolder(charts, as)).write(figures, open);
      }
      if (step.json) {
        out.println(RecordJson.text(FiguresJson.of(figures, open)));
      } else {
        out.println(period());
        new FiguresText(out).print(figures, open);
      }
      return ExitCodes.DONE;
    }
  }

  private String period() {
    return "Period of "
        + (shipped ? "shipment" : "reception")
        + ": "
        + Optional.ofNullable(from).map(LocalDate::toString).orElse("beginning")
        + " to "
        + Optional.ofNullable(until).map(LocalDate::toString).orElse("today")
        + ". In brackets: the 95 % interval.";
  }
}
