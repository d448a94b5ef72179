package corewright.station.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.fixtures.describe.Descriptions;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.measures.statistics.CalibrationLine;
import corewright.station.work.Calibrating;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Calibrates a channel of a bench against a meter. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    description = {
      "Fits a line to what a channel and a meter read side by side, at ten levels or more; keeps"
          + " the levels as found and as left in the record, writes what the channel is known to"
          + " into the bench's file, and leaves the file's earlier text beside it.",
      "A channel that is found further off than the bench stated makes every result since its last"
          + " calibration suspect."
    },
    footer = {
      "",
      "Examples, with lines 'meter;u;bench' in the files:",
      "  corewright calibrate --bench bench-1.json --channel output --found found.csv --meter"
          + " 'meter 4711, K-2026-88' --due 2027-11-29 --by 'M. Reyes'",
      "  corewright calibrate --bench bench-1.json --channel output --found found.csv --left"
          + " left.csv --meter 'meter 4711, K-2026-88' --due 2027-11-29"
    })
final class CalibrateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Option(names = "--bench", required = true, paramLabel = "FILE", description = "The bench.")
  private Path bench = Path.of("");

  @Option(names = "--channel", required = true, description = "As the bench's file calls it.")
  private String channel = "";

  @Option(
      names = "--found",
      required = true,
      paramLabel = "FILE",
      description = "Levels before anything was touched.")
  private Path found = Path.of("");

  @Option(
      names = "--left",
      paramLabel = "FILE",
      description = "Levels after the board was set; none: nothing was touched.")
  private @Nullable Path left;

  @Option(names = "--meter", required = true, description = "Which one, and its certificate.")
  private String meter = "";

  @Option(
      names = "--meter-gain",
      paramLabel = "U",
      defaultValue = "0",
      description =
          "Standard uncertainty of the meter's scale factor, relative, where it is the same at all"
              + " levels (${DEFAULT-VALUE}).")
  private double meterGain;

  @Option(
      names = "--due",
      required = true,
      paramLabel = "DAY",
      description = "When it is due again.")
  private LocalDate due = LocalDate.MIN;

  @Override
  public Integer call() {
    try (Workshop workshop = step.open(Descriptions.bench(bench).id())) {
      FutureDay.require(due, workshop.today());
      Calibrating.Result result =
          workshop
              .calibrating()
              .calibrate(
                  new Calibrating.Request(
                      bench, channel, found, Optional.ofNullable(left), meter, meterGain, due),
                  step.by);
      PrintWriter out = spec.commandLine().getOut();
      if (step.json) {
        out.println(RecordJson.text(json(result)));
      } else {
        out.println("As found: " + words(result.found()));
        if (left != null) {
          out.println("As left:  " + words(result.left()));
        }
        result
            .out()
            .ifPresent(o -> out.println(o + " Results since then are suspect: see 'shift'."));
        out.println(
            String.format(
                Locale.ROOT,
                "Written into %s: gain_rel %.3g, offset %.3g, %s. Its earlier text: %s",
                bench,
                result.entry().gain_rel(),
                result.entry().offset(),
                result.entry().calibration(),
                result.old()));
        out.println(
            String.format(
                Locale.ROOT,
                "To take the rest away, multiply the channel's lsb and offset, which the board or"
                    + " the digitizer's dialect states, by %.7g and add %.4g to the offset; then"
                    + " take the levels again, as left.",
                result.gain(),
                result.zero()));
      }
      return ExitCodes.DONE;
    }
  }

  private String words(CalibrationLine line) {
    Unit unit = Calibrating.unit(channel);
    return "reads "
        + Figures.withU(new Measurement(line.zero(), line.uZero(), unit))
        + " and "
        + Figures.withU(new Measurement(100 * line.slope(), 100 * line.uSlope(), Unit.PERCENT))
        + " of the level too much (k = 2), scatter "
        + Figures.number(line.scatter(), 2)
        + " of what was stated";
  }

  private static ObjectNode json(Calibrating.Result result) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("channel", result.entry().channel());
    json.put("out", result.out().orElse(null));
    line(json.putObject("found"), result.found());
    line(json.putObject("left"), result.left());
    json.put("gain_rel", result.entry().gain_rel());
    json.put("offset", result.entry().offset());
    json.put("calibration", result.entry().calibration());
    json.put("old", result.old().toString());
    return json;
  }

  private static void line(ObjectNode json, CalibrationLine line) {
    json.put("zero", line.zero()).put("uZero", line.uZero());
    json.put("slope", line.slope()).put("uSlope", line.uSlope());
    json.put("scatter", line.scatter());
  }
}
