package corewright.station.work;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.BenchDescription.ChannelCalibration;
import corewright.fixtures.describe.Descriptions;
import corewright.measures.Figures;
import corewright.measures.Unit;
import corewright.measures.statistics.CalibrationLine;
import corewright.reports.ledger.Ledger;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * Calibrates a channel of a bench against a meter: as it was found, as it was left, what is written
 * into the bench's file. Gain and zero themselves are the board's; what the file has is how well
 * they are known.
 */
public final class Calibrating {
  private static final Set<String> CURRENTS = Set.of("load", "inputCurrent");

  private final Ledger ledger;

  Calibrating(Ledger ledger) {
    this.ledger = ledger;
  }

  /**
   * What was taken.
   *
   * @param found levels before anything was touched
   * @param left levels afterwards; empty: nothing was touched
   * @param meter which one, with its certificate
   * @param meterGain_rel standard uncertainty of its scale factor, the same at all levels, relative
   */
  public record Request(
      Path bench,
      String channel,
      Path found,
      Optional<Path> left,
      String meter,
      double meterGain_rel,
      LocalDate due) {}

  /**
   * What it came to.
   *
   * @param out how far off it was found, a sentence; empty: as the bench stated
   * @param gain what the board's lsb would be multiplied by to take the rest away
   * @param zero what would then be added to its offset
   * @param old where the file's earlier text is
   */
  public record Result(
      CalibrationLine found,
      CalibrationLine left,
      Optional<String> out,
      double gain,
      double zero,
      ChannelCalibration entry,
      Path old) {}

  /** What the record keeps. */
  private record Kept(
      String meter,
      double meterGain_rel,
      String due,
      Levels foundLevels,
      CalibrationLine found,
      Optional<Levels> leftLevels,
      CalibrationLine left,
      ChannelCalibration before,
      ChannelCalibration after) {}

  /**
   * Calibrates: the event is written first, then the file.
   *
   * @throws Refused if the bench has no such channel
   */
  public Result calibrate(Request asked, String who) {
    if (asked.meter().isBlank()) {
      throw new Refused(
          "Which meter it was held against is not said",
          "Give --meter, with its number and its certificate: the calibration rests on them.");
    }
    BenchDescription bench = Descriptions.bench(asked.bench());
    ChannelCalibration before =
        bench.channels().stream()
            .filter(c -> c.channel().equals(asked.channel()))
            .findFirst()
            .orElseThrow(
                () ->
                    new Refused(
                        "Bench " + bench.id() + " has no channel " + asked.channel(),
                        "It has "
                            + String.join(
                                ", ", bench.channels().stream().map(c -> c.channel()).toList())
                            + "."));
    Levels found = Levels.read(asked.found());
    Optional<Levels> left = asked.left().map(Levels::read);
    CalibrationLine line = left.orElse(found).line();
    ChannelCalibration after =
        new ChannelCalibration(
            asked.channel(),
            // What is not taken away is not known any better: JCGM 100, F.2.4.5.
            Math.hypot(Math.hypot(line.uSlope(), line.slope()), asked.meterGain_rel()),
            Math.hypot(line.uZero(), line.zero()),
            asked.meter() + ", due " + asked.due(),
            before.noise());
    Optional<String> out = out(found, before, asked);
    ledger
        .benches()
        .calibrated(
            bench.id(),
            asked.channel(),
            new Kept(
                asked.meter(),
                asked.meterGain_rel(),
                asked.due().toString(),
                found,
                found.line(),
                left,
                line,
                before,
                after),
            out,
            who);
    Path old = write(asked.bench(), bench, after);
    double gain = 1 / (1 + line.slope());
    return new Result(found.line(), line, out, gain, -line.zero() * gain, after, old);
  }

  /** The level that is furthest beyond what the bench stated, k = 2, the meter's part included. */
  private static Optional<String> out(Levels found, ChannelCalibration stated, Request asked) {
    double worst = 1;
    Optional<String> sentence = Optional.empty();
    double[] errors = found.errors();
    for (int i = 0; i < errors.length; i++) {
      double x = found.meter().get(i);
      double u =
          Math.hypot(
              Math.hypot(stated.gain_rel() * x, stated.offset()),
              Math.hypot(found.u().get(i), asked.meterGain_rel() * x));
      double times = Math.abs(errors[i]) / (2 * u);
      if (times > worst) {
        worst = times;
        sentence =
            Optional.of(
                "Channel "
                    + asked.channel()
                    + " was found to read "
                    + of(errors[i], 4, asked)
                    + " off at "
                    + of(x, 3, asked)
                    + "; the bench stated no more than "
                    + of(2 * u, 4, asked)
                    + " (k = 2).");
      }
    }
    return sentence;
  }

  private static String of(double value, int decimals, Request asked) {
    return Figures.number(value, decimals) + " " + unit(asked.channel()).symbol();
  }

  /** What a channel reads in: currents by their names, every other is a voltage. */
  public static Unit unit(String channel) {
    return CURRENTS.contains(channel) ? Unit.AMPERE : Unit.VOLT;
  }

  private static Path write(Path file, BenchDescription bench, ChannelCalibration after) {
    return BenchRevision.write(
        file,
        bench,
        tree -> {
          for (JsonNode channel : tree.withArray("channels")) {
            if (channel.path("channel").asText().equals(after.channel())) {
              ((ObjectNode) channel)
                  .put("gain_rel", after.gain_rel())
                  .put("offset", after.offset())
                  .put("calibration", after.calibration());
            }
          }
        });
  }
}
