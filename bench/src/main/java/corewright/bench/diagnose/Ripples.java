package corewright.bench.diagnose;

import static corewright.bench.diagnose.Look.at;
import static corewright.bench.diagnose.Look.load_A;
import static corewright.bench.diagnose.Look.reading;
import static corewright.bench.diagnose.Look.value;

import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.Quantity;
import corewright.profiles.Family;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Signs in the ripple of the converter at work: how fast it switches, what its capacitor is. */
final class Ripples {
  /** Above what parts 30 % high, three deviations, at the cold end of 5 K make of it. */
  private static final double RAISED = 1.4;

  private static final double HIGH = 2.6;

  /** Healthy units show less than a hundredth of the fundamental, %. */
  private static final double SUBHARMONIC = 4;

  private static final double SAME_FREQUENCY = 0.08;

  private final Look look;
  private final List<Double> built_Hz;

  Ripples(Look look) {
    this.look = look;
    built_Hz = built_Hz(look.family());
  }

  /** Converter frequencies of the family's builds: the commonest one's, and those of its key. */
  private static List<Double> built_Hz(Family family) {
    return Stream.concat(
            Stream.of(family.switching_Hz()),
            family.cues().stream()
                .flatMap(c -> c.scale().stream())
                .filter(s -> s.unit().equals("Hz"))
                .flatMap(s -> s.bands().stream())
                .map(b -> Math.sqrt(b.from() * b.to())))
        .toList();
  }

  Stream<Seen> seen() {
    return Stream.of(frequency(), subharmonic(), ripple()).flatMap(Optional::stream);
  }

  private Optional<Seen> frequency() {
    return strongest()
        .map(
            h -> {
              double ripple_Hz = value(h, Quantity.RIPPLE_FUNDAMENTAL);
              Sign sign =
                  isOne(ripple_Hz)
                      ? Sign.FREQUENCY_AS_BUILT
                      : isOne(2 * ripple_Hz) ? Sign.FREQUENCY_HALF : Sign.FREQUENCY_OTHER;
              return new Seen(
                  sign, "the ripple has " + reading(h, Quantity.RIPPLE_FUNDAMENTAL) + at(h));
            });
  }

  /** A converter at work that holds: one that does not swings at half its frequency as well. */
  private Optional<Seen> subharmonic() {
    return strongest()
        .filter(look::regulated)
        .flatMap(
            h ->
                h.value(Quantity.RIPPLE_SUBHARMONIC)
                    .map(
                        part ->
                            new Seen(
                                part.value() - 2 * part.u() > SUBHARMONIC
                                    ? Sign.SUBHARMONIC_MUCH
                                    : Sign.SUBHARMONIC_LITTLE,
                                "half the ripple's frequency has "
                                    + reading(h, Quantity.RIPPLE_SUBHARMONIC)
                                    + " of its amplitude"
                                    + at(h))));
  }

  private boolean isOne(double hertz) {
    return built_Hz.stream().anyMatch(built -> Math.abs(hertz / built - 1) < SAME_FREQUENCY);
  }

  private Optional<Seen> ripple() {
    return strongest()
        .map(
            h -> {
              double ratio = value(h, Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE) / expected_V(h);
              Sign sign =
                  ratio > HIGH
                      ? Sign.RIPPLE_HIGH
                      : ratio > RAISED ? Sign.RIPPLE_RAISED : Sign.RIPPLE_NORMAL;
              return new Seen(
                  sign,
                  "the amplitude of the ripple's fundamental is "
                      + reading(h, Quantity.RIPPLE_FUNDAMENTAL_AMPLITUDE)
                      + at(h)
                      + ", "
                      + Figures.number(ratio, 1)
                      + " times what a healthy capacitor makes of this load");
            });
  }

  /**
   * Fundamental of the diode current, which flows for the share {@code d'} = input/output of the
   * period at {@code load/d'}, on the capacitor's resistance: 2/π · sin(π d') · load/d' · ESR.
   */
  private double expected_V(MeasuredHold h) {
    double open = Math.min(1, value(h, Quantity.INPUT) / value(h, Quantity.OUTPUT));
    return look.family().esr_ohm() * 2 / Math.PI * Math.sin(Math.PI * open) * load_A(h) / open;
  }

  /** The hold of largest load whose ripple shows the converter at work. */
  private Optional<MeasuredHold> strongest() {
    return look.loaded().stream()
        .filter(look::nominalLine)
        .filter(h -> h.value(Quantity.RIPPLE_FUNDAMENTAL).isPresent())
        .filter(h -> value(h, Quantity.RIPPLE_FUNDAMENTAL) > 0.2 * look.family().switching_Hz())
        .max(Comparator.comparingDouble(Look::load_A));
  }
}
