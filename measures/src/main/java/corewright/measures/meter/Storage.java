package corewright.measures.meter;

import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.wave.PulseTrain;
import corewright.measures.wave.Samples;
import corewright.measures.wave.StorageFit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What the capacitors at the output hold and their series resistance: from the step that begins a
 * hold, or from the pulses in it.
 *
 * <p>A step is only read where it sets out from a light load: a loaded boost converter first
 * delivers less when it is asked for more (its right half-plane zero), and the capacitors would be
 * blamed. What that leaves, and the cut of the model, is counted as 3 % of C and as 7.5 % or 1.5 mΩ
 * of the resistance (common practice, no source).
 */
record Storage(Channel output, Channel load, double largestLoad_A) {
  private static final double LEAST_RATE_HZ = 100e3;
  private static final double LONGEST_EDGE_S = 50e-6;
  private static final double LIGHT_PART = 0.2;

  /** The answer of the converter is a few terms of a series over this time. */
  private static final double REACH_S = 250e-6;

  /** The model's own error shows in how much a longer reach changes the result. */
  private static final double LONGER_S = 350e-6;

  private static final double LONGEST_PERIOD_S = 50e-6;
  private static final double CAPACITANCE_REL = 0.03;
  private static final double RESISTANCE_REL = 0.075;
  private static final double RESISTANCE_OHM = 1.5e-3;

  /** U beyond this part of the value says that nothing was measured. */
  private static final double USELESS = 0.5;

  private static final int MOST_PULSES = 50;
  private static final int FEWEST_IN_PULSE = 16;

  private static final Quantity[] BOTH = {Quantity.CAPACITANCE_FROM_CHARGE, Quantity.ESR};

  /** From pulses where there are any, else from the step. */
  void read(Window window, Window before, PulseTrain train, double period_s, Readings into) {
    double rate = output.sampleRate_Hz();
    if (rate < LEAST_RATE_HZ) {
      into.none(
          "not measurable at "
              + Math.round(rate)
              + " samples a second: the step of the series resistance is over within one of them,"
              + " and 100,000 are needed",
          BOTH);
      return;
    }
    double period = period_s <= LONGEST_PERIOD_S ? period_s * rate : 0;
    if (train.pulses().size() >= Pulsed.FEWEST) {
      fromPulses(window, train, period, into);
    } else {
      fromStep(window, before, period, into);
    }
  }

  private void fromStep(Window window, Window before, double period, Readings into) {
    Optional<String> unfit = unfit(window, before);
    if (unfit.isPresent()) {
      into.none(unfit.get(), BOTH);
      return;
    }
    Optional<StorageFit> near = step(window, before, REACH_S, period);
    Optional<StorageFit> far = step(window, before, LONGER_S, period);
    if (near.isEmpty() || far.isEmpty()) {
      into.none("the hold is too short, or its ripple hides what the step does", BOTH);
      return;
    }
    StorageFit fit = near.get();
    // What a longer reach changes is as likely to be the error as twice its standard deviation.
    double ofC = (fit.capacitance() - far.get().capacitance()) / 2;
    double ofR = (fit.resistance() - far.get().resistance()) / 2;
    put(
        fit.capacitance(),
        Root.of(fit.uCapacitance(), ofC),
        fit.resistance(),
        Root.of(fit.uResistance(), ofR),
        into);
  }

  private Optional<String> unfit(Window window, Window before) {
    if (!window.hold().edge()) {
      return Optional.of("no load edge begins this hold, and the load is not pulsed");
    }
    if (before.unread().isPresent() || window.unread().isPresent()) {
      return Optional.of("samples are missing, or the hold is too short");
    }
    double was = load.level(before).mean();
    double is = load.level(window).mean();
    if (is <= was || was > LIGHT_PART * largestLoad_A) {
      return Optional.of(
          "not measurable from this step: it does not rise from a light load, and the converter's"
              + " own answer hides that of the capacitors");
    }
    double edge_s = edge_s(window, was, is);
    if (edge_s > LONGEST_EDGE_S) {
      return Optional.of(
          "not measurable: the load takes "
              + Math.round(edge_s * 1e6)
              + " µs to step, and the converter answers before it is over; 50 µs are the most");
    }
    return Optional.empty();
  }

  /** From 10 to 90 % of the step, s. */
  private double edge_s(Window window, double was, double is) {
    double rate = load.sampleRate_Hz();
    int reach = (int) (LONGER_S * rate);
    int middle = Samples.at(window.hold().start_s(), rate);
    int from = Math.max(0, middle - reach);
    int to = Math.min(load.wave().size(), middle + reach);
    int inside = 0;
    for (int i = from; i < to; i++) {
      double part = (load.wave().at(i) - was) / (is - was);
      inside += part > 0.1 && part < 0.9 ? 1 : 0;
    }
    return inside / rate;
  }

  private Optional<StorageFit> step(Window window, Window before, double reach_s, double period) {
    double rate = output.sampleRate_Hz();
    int edge = Samples.at(window.hold().start_s(), rate);
    int reach = (int) Math.ceil(reach_s * rate);
    int from = Math.max(before.holdFrom(), edge - reach);
    int to = Math.min(window.guardTo(), edge + reach);
    int change = edge - (int) Math.ceil(LONGEST_EDGE_S / 2 * rate);
    return change - from < 2 || to - edge < FEWEST_IN_PULSE
        ? Optional.empty()
        : StorageFit.of(output.wave(), load.wave(), rate, from, change, to, period);
  }

  /**
   * Read where each pulse ends: while it lasts the converter comes to its limit, and just after it
   * is still there, so that what it gives is a straight line across the edge. Where a pulse begins
   * the converter is still answering.
   */
  private void fromPulses(Window window, PulseTrain train, double period, Readings into) {
    List<PulseTrain.Pulse> pulses = train.pulses();
    double rate = output.sampleRate_Hz();
    int every = Math.max(1, pulses.size() / MOST_PULSES);
    int reach = (int) Math.ceil(REACH_S * rate);
    int edge = (int) Math.ceil(LONGEST_EDGE_S * rate);
    List<StorageFit> fits = new ArrayList<>();
    for (int p = 0; p < pulses.size(); p += every) {
      PulseTrain.Pulse pulse = pulses.get(p);
      int latest = p + 1 == pulses.size() ? window.to() : pulses.get(p + 1).from();
      int begun = pulse.from() + Math.min(edge, pulse.length() / 4);
      int from = Math.max(begun, pulse.to() - reach);
      int change = Math.max(from + 2, pulse.to() - edge);
      int to = Math.min((pulse.to() + latest) / 2, pulse.to() + reach);
      if (pulse.length() >= FEWEST_IN_PULSE && to - pulse.to() >= 2) {
        StorageFit.of(output.wave(), load.wave(), rate, from, change, to, period)
            .ifPresent(fits::add);
      }
    }
    if (fits.size() < Pulsed.FEWEST) {
      into.none(
          "not measurable: a pulse has too few samples, "
              + FEWEST_IN_PULSE
              + " are needed, or the ripple hides it",
          BOTH);
      return;
    }
    Middle capacitance = Middle.of(fits.stream().mapToDouble(StorageFit::capacitance).toArray());
    Middle resistance = Middle.of(fits.stream().mapToDouble(StorageFit::resistance).toArray());
    put(capacitance.median(), capacitance.u(), resistance.median(), resistance.u(), into);
  }

  private void put(double c_F, double uC_F, double r_ohm, double uR_ohm, Readings into) {
    double gain = Root.of(output.doubt().gain_rel(), load.doubt().gain_rel());
    into.put(
        Quantity.CAPACITANCE_FROM_CHARGE,
        told(c_F, Root.of(uC_F, c_F * CAPACITANCE_REL, c_F * gain), Unit.FARAD));
    double model = Math.max(RESISTANCE_OHM, Math.abs(r_ohm) * RESISTANCE_REL);
    into.put(Quantity.ESR, told(r_ohm, Root.of(uR_ohm, model, r_ohm * gain), Unit.OHM));
  }

  /** A reading, unless its uncertainty is most of it. */
  static Reading told(double value, double u, Unit unit) {
    return 2 * u <= USELESS * Math.abs(value) && value > 0
        ? Reading.of(value, u, unit)
        : Reading.none(
            "not measurable: ripple and noise leave it open to more than half of itself");
  }

  /** Median of several, and how well it is known from their scatter. */
  record Middle(double median, double spread, int count) {
    /** Standard deviation of a normal distribution for each unit of the median distance. */
    private static final double NORMAL = 1.4826;

    static Middle of(double[] several) {
      double[] sorted = several.clone();
      Arrays.sort(sorted);
      double median = median(sorted);
      double[] distances = Arrays.stream(sorted).map(x -> Math.abs(x - median)).sorted().toArray();
      return new Middle(median, NORMAL * median(distances), sorted.length);
    }

    private static double median(double[] sorted) {
      int n = sorted.length;
      return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    /** Of the median: √(π/2) times that of a mean. */
    double u() {
      return spread * Math.sqrt(Math.PI / 2 / count);
    }
  }
}
