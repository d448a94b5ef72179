package corewright.station.cli;

import corewright.bench.capture.csv.Overrides;
import corewright.station.work.MeasureFile.Known;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What else is known of a record, for the readings that need it. */
final class ReadingOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = {"--calibration", "--bench"},
      paramLabel = "FILE",
      description =
          "What is known about the channels that recorded it: the \"channels\" of a bench"
              + " description, or the whole of one. Gain and offset count into U then; without it U"
              + " holds scatter and resolution only.")
  private @Nullable Path calibration;

  @Option(
      names = "--band",
      paramLabel = "V",
      description = "Times the recovery into ± this many V as well.")
  private @Nullable Double band_V;

  @Option(
      names = "--bandwidth",
      paramLabel = "HZ",
      description = "Reads the ripple in this bandwidth as well.")
  private @Nullable Double bandwidth_Hz;

  @Option(
      names = "--switching",
      paramLabel = "HZ",
      description = "The converter's switching frequency (default: the family's).")
  private @Nullable Double switching_Hz;

  @Option(
      names = "--discharge",
      paramLabel = "OHM",
      description = "What the output is discharged through: a decay then tells its capacitance.")
  private @Nullable Double discharge_ohm;

  @Option(
      names = "--budget",
      description =
          "Prints what each uncertainty is made of: source, estimate, u, distribution, degrees of"
              + " freedom, sensitivity, contribution, and k (JCGM 100).")
  private boolean budget;

  @Option(
      names = "--column",
      paramLabel = "WHAT=WHICH",
      description =
          "Which column is which, by number from 1 or by heading: time, output, load, input,"
              + " inputCurrent. Against what the headings say.")
  private Map<String, String> columns = new LinkedHashMap<>();

  @Option(
      names = "--unit",
      paramLabel = "WHAT=UNIT",
      description = "In what unit a column is, for example output=mV.")
  private Map<String, String> units = new LinkedHashMap<>();

  @Option(
      names = "--rate",
      paramLabel = "HZ",
      description = "Samples a second; a column of time is then not read.")
  private @Nullable Double rate_Hz;

  boolean budget() {
    return budget;
  }

  Known known() {
    return new Known(
        Optional.ofNullable(calibration),
        above0(band_V, "--band"),
        above0(bandwidth_Hz, "--bandwidth"),
        above0(switching_Hz, "--switching"),
        above0(discharge_ohm, "--discharge"),
        overrides());
  }

  private Overrides overrides() {
    try {
      return new Overrides(columns, units, above0(rate_Hz, "--rate"));
    } catch (IllegalArgumentException wrong) {
      throw new ParameterException(
          spec.commandLine(), "--column or --unit: " + wrong.getMessage(), wrong);
    }
  }

  private Optional<Double> above0(@Nullable Double value, String option) {
    if (value != null && !(value > 0 && value <= Double.MAX_VALUE)) {
      throw new ParameterException(
          spec.commandLine(), option + " is " + value + ", and must be above 0.");
    }
    return Optional.ofNullable(value);
  }
}
