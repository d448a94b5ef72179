package corewright.station.cli;

import corewright.bench.record.RunRecord;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.Descriptions;
import corewright.profiles.Catalogue;
import corewright.station.work.Home;
import corewright.station.work.Importing;
import corewright.station.work.MeasureFile;
import corewright.station.work.MeasureFile.Request;
import corewright.station.work.MeasureFile.Result;
import corewright.station.work.RunIds;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Measures a recorded file. */
@Command(
    name = "measure",
    mixinStandardHelpOptions = true,
    description = {
      "Finds the holds of a recorded file in its load current and takes every reading, with its"
          + " uncertainty. Reads CSV (also .gz) with a header such as"
          + " time_s,input_V,output_V,load_A, and captures that a run has left.",
      "Readings go to stdout; what was guessed about the file goes to stderr.",
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  corewright measure record.csv.gz",
      "  corewright measure record.csv --nominal 48 --settle 0.005 --guard 0.0001 --json",
      "  corewright measure record.csv --family sd48",
      "  corewright measure record.csv --calibration recorder.json --budget",
      "  corewright measure record.csv --spectrum spectrum.csv",
      "  corewright measure export.csv --column output=3 --unit output=mV --rate 10000",
      "  corewright measure record.csv --answers core.json      keeps it as a run of that core",
    })
final class MeasureCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "What to measure.")
  private Path file;

  @Option(
      names = "--family",
      paramLabel = "ID",
      description = "The unit's family: judges the record by the family's default profile.")
  private @Nullable String family;

  @Option(
      names = "--profile",
      paramLabel = "FILE",
      description = "Judges the record by this profile.")
  private @Nullable Path profile;

  @Option(
      names = "--nominal",
      paramLabel = "V",
      description = "Nominal output in V: the recovery band is 1 %% of it.")
  private @Nullable Double nominal_V;

  @Option(
      names = "--settle",
      paramLabel = "S",
      description =
          "Seconds after each load edge that are not judged (default: 0.5 s or a fifth of"
              + " the shortest hold, whichever is less).")
  private @Nullable Double settle_s;

  @Option(
      names = "--guard",
      paramLabel = "S",
      description =
          "Seconds before the next edge that are not judged (default: 20 ms or a hundredth"
              + " of the shortest hold).")
  private @Nullable Double guard_s;

  @Mixin private ReadingOptions readings;
  @Mixin private UnitOptions unit;
  @Mixin private ShopFolder shop;

  @Option(
      names = "--spectrum",
      paramLabel = "CSV",
      description =
          "Writes what the output of each hold is made of by frequency: peak amplitude (flat-top"
              + " window) and density (Hann) of every bin, with window and resolution.")
  private @Nullable Path spectrum;

  @Option(names = "--json", description = "JSON on stdout, and nothing else there.")
  private boolean json;

  @Override
  public Integer call() {
    Request request =
        new Request(
            file,
            Optional.ofNullable(family),
            Optional.ofNullable(profile),
            above(nominal_V, "--nominal", Double.MIN_VALUE),
            above(settle_s, "--settle", 0),
            above(guard_s, "--guard", 0),
            readings.known());
    if (json && readings.budget()) {
      throw new ParameterException(
          spec.commandLine(), "--budget is for reading: leave out --json, or --budget.");
    }
    if (spectrum != null && unit.isNamed()) {
      throw new ParameterException(
          spec.commandLine(), "--spectrum is for a file alone: leave out --tag and --answers.");
    }
    if (unit.isNamed()) {
      return record(request);
    }
    Result result =
        new MeasureFile(Catalogue.in(Home.fromSystem().families()))
            .measure(request, new ProgressLine(spec.commandLine().getErr()));
    if (spectrum != null) {
      SpectrumFile.write(result, spectrum);
    }
    PrintWriter out = spec.commandLine().getOut();
    result.recording().guesses().forEach(spec.commandLine().getErr()::println);
    if (json) {
      out.println(new MeasureJson(result).text());
    } else {
      new MeasureTable(result).print(out);
      if (readings.budget()) {
        BudgetTable.print(result, out);
      }
    }
    out.flush();
    return ExitCodes.DONE;
  }

  /** The whole way: the record is taken as a run of the unit, judged, decided, documented. */
  private Integer record(Request request) {
    Clock clock = Clock.system();
    try (Workshop workshop = shop.open("import", clock)) {
      String who = unit.who(workshop);
      shop.signIn(workshop, who);
      String tag = unit.tag(workshop);
      RunRecord run =
          workshop
              .importing()
              .take(
                  new Importing.Request(
                      tag,
                      request.file(),
                      request.profile().map(workshop.catalogue()::readProfile),
                      request.settle_s(),
                      request.guard_s(),
                      request.known().calibration().map(Descriptions::calibration),
                      who),
                  new RunIds("import", new SecureRandom()));
      OutcomeReport.print(workshop.conclude(run, who), json, spec.commandLine().getOut());
      return ExitCodes.DONE;
    }
  }

  private Optional<Double> above(@Nullable Double value, String option, double least) {
    if (value != null && !(value >= least && value <= Double.MAX_VALUE)) {
      throw new ParameterException(
          spec.commandLine(),
          option + " is " + value + ", and must be " + (least == 0 ? "0 or more." : "above 0."));
    }
    return Optional.ofNullable(value);
  }
}
