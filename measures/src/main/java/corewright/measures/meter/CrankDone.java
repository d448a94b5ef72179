package corewright.measures.meter;

import corewright.measures.Figures;
import corewright.measures.Waveform;
import java.util.Optional;

/** Whether load and source did while cranking what they were told. */
final class CrankDone {
  /** A load is no closer to the charge that it is told (common practice, no source). */
  private static final double SAME_CHARGE = 0.1;

  /** Nor a source to its swing, with what the input sags beneath it. */
  private static final double SAME_SWING = 0.25;

  private CrankDone() {}

  /** A sentence where the load took another charge than it was told, all events together. */
  static Optional<String> otherEvents(Channel load, PulsesAsked asked, int from) {
    double took = charge_As(load.wave(), (asked.low_A() + asked.high_A()) / 2, from);
    took /= load.sampleRate_Hz();
    double events = asked.rate_Hz() * (load.wave().size() - from) / load.sampleRate_Hz();
    double off = Math.abs(took - events * asked.charge_As());
    // one event more or less at the ends of the level
    return off <= (SAME_CHARGE * events + 1) * asked.charge_As()
        ? Optional.empty()
        : Optional.of(
            "the events of the load took "
                + Figures.number(took * 1e3, 1)
                + " mC, and "
                + Figures.number(events * asked.charge_As() * 1e3, 1)
                + " mC were asked: look at the load");
  }

  /** Beyond what lies between the events, in samples. */
  private static double charge_As(Waveform load, double between_A, int from) {
    double low = 0;
    int lows = 0;
    double all = 0;
    for (int i = from; i < load.size(); i++) {
      double at = load.at(i);
      all += at;
      if (at < between_A) {
        low += at;
        lows++;
      }
    }
    return all - (load.size() - from) * low / Math.max(1, lows);
  }

  /** A sentence where the input swung by another amount than the source was told. */
  static Optional<String> otherSwing(Channel feed, CrankAsked.Swing asked, int from) {
    double seen = swing_Vpp(feed, asked.rate_Hz(), from);
    return Math.abs(seen - asked.swing_Vpp()) <= SAME_SWING * asked.swing_Vpp()
        ? Optional.empty()
        : Optional.of(
            "The input swung by "
                + Figures.number(seen, 2)
                + " V from crest to trough, and "
                + Figures.number(asked.swing_Vpp(), 2)
                + " V were asked: look at the source.");
  }

  /** Fourier's sum at one frequency, over whole periods. */
  private static double swing_Vpp(Channel feed, double rate_Hz, int from) {
    double period = feed.sampleRate_Hz() / rate_Hz;
    int count = (int) (Math.floor((feed.wave().size() - from) / period) * period);
    double mean = 0;
    for (int i = 0; i < count; i++) {
      mean += feed.wave().at(from + i) / count;
    }
    double in = 0;
    double across = 0;
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * i / period;
      double value = feed.wave().at(from + i) - mean;
      in += value * Math.cos(angle);
      across += value * Math.sin(angle);
    }
    return count == 0 ? 0 : 4 * Math.hypot(in, across) / count;
  }
}
