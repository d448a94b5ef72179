package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Cue;
import corewright.profiles.Cue.TravelsWith;
import corewright.profiles.Family;
import corewright.profiles.Scale;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a run shows of the build: a cue of the bench whose scale is in Hz is the frequency at which
 * the converter switches under load, the fundamental of the ripple. It is answered where the run
 * resolves every answer of the scale and all loaded holds give the same one; otherwise it stays
 * unanswered, as a fault can move it.
 */
public final class BenchCues {
  private static final double K = 2;

  /** A converter may skip periods at light load: only holds from this part of the rated load on. */
  private static final double LOADED = 0.45;

  private BenchCues() {}

  /**
   * The answers that a run gives, for the key to weigh beside what people saw.
   *
   * @param who as it shall stand in the record, as {@code bench B1}
   */
  public static List<CueAnswer> of(Family family, MeasuredRun run, String who, Instant when) {
    return family.cues().stream()
        .filter(c -> c.travelsWith() == TravelsWith.BENCH)
        .filter(c -> c.scale().filter(s -> s.unit().equals("Hz") && resolves(run, s)).isPresent())
        .flatMap(c -> switching(family, run, c, who, when).stream())
        .toList();
  }

  /** Sampled fast enough that no answer of the scale could be an alias of another frequency's. */
  private static boolean resolves(MeasuredRun run, Scale scale) {
    double highest_Hz = scale.bands().stream().mapToDouble(Scale.Band::to).max().orElse(0);
    return run.sampleRate_Hz() > 2 * highest_Hz;
  }

  private static Optional<CueAnswer> switching(
      Family family, MeasuredRun run, Cue cue, String who, Instant when) {
    List<CueAnswer> answers =
        run.holds().stream()
            .filter(h -> load_A(h) >= LOADED * family.ratedLoad_A())
            .flatMap(h -> h.value(Quantity.RIPPLE_FUNDAMENTAL).stream())
            .map(f -> answer(cue, f, who, when))
            .toList();
    boolean same = answers.stream().map(CueAnswer::answer).distinct().count() == 1;
    return answers.stream()
        .filter(a -> same && !a.answer().equals(Identifier.NOT_SEEN))
        .reduce((first, last) -> last);
  }

  private static CueAnswer answer(Cue cue, Measurement f, String who, Instant when) {
    String read =
        String.format(Locale.ROOT, "%.0f ± %.0f Hz", f.value(), Math.max(1, f.expanded(K)));
    return new CueAnswer(cue.id(), Identifier.answer(cue, read, when), who, when, read, "");
  }

  private static double load_A(MeasuredHold hold) {
    return hold.value(Quantity.LOAD).map(Measurement::value).orElse(0.0);
  }
}
