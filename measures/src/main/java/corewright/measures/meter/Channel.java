package corewright.measures.meter;

import corewright.measures.ChannelDoubt;
import corewright.measures.Measurement;
import corewright.measures.Reading;
import corewright.measures.Waveform;
import corewright.measures.wave.Corners;
import corewright.measures.wave.CorrelatedScatter;
import corewright.measures.wave.LinearTrend;
import corewright.measures.wave.Resolution;
import corewright.measures.wave.Tail;
import java.util.List;

/**
 * A waveform with what is known about the channel it came through.
 *
 * @param doubt gain and offset, the same in all holds of a run
 */
record Channel(Waveform wave, double sampleRate_Hz, ChannelDoubt doubt, Resolution resolution) {

  static final String GAP = "samples are missing inside the window";

  /** A channel whose resolution is looked for in these windows. */
  static Channel of(Waveform wave, double sampleRate_Hz, ChannelDoubt doubt, List<Window> windows) {
    List<Resolution> seen =
        windows.stream()
            .filter(w -> w.count() > 0)
            .flatMap(w -> Resolution.of(wave, w.from(), w.to()).stream())
            .toList();
    return new Channel(wave, sampleRate_Hz, doubt, Resolution.smallest(seen, wave));
  }

  Level level(Window window) {
    return Level.of(this, window.from(), window.to());
  }

  /** A level with gain and offset: for a value that stands by itself. */
  Measurement absolute(double value, double uRandom) {
    return new Measurement(
        value, Root.of(uRandom, doubt.gain_rel() * value, doubt.offset()), wave.unit());
  }

  /**
   * A difference of two values of this channel: the offset cancels, the gain acts on what is left.
   */
  Measurement difference(double value, double uRandom) {
    return new Measurement(value, Root.of(uRandom, doubt.gain_rel() * value), wave.unit());
  }

  /** Lowest raw sample of a whole hold; none where the judged window has a gap. */
  Reading lowest(Window window) {
    if (window.missing() == Window.Missing.INSIDE_THE_WINDOW) {
      return Reading.none(GAP);
    }
    int from = window.holdFrom();
    int to = window.holdTo();
    int at = from;
    for (int i = from; i < to; i++) {
      at = wave.codeAt(i) < wave.codeAt(at) ? i : at;
    }
    CorrelatedScatter settled = scatter(window);
    double tail =
        window.count() == 0
            ? 0
            : Tail.of(wave, window.from(), window.to())
                    .lowestU(resolution.step(), settled, wave, from, to)
                / 2;
    // Noise of a step and more holds what rounding does to a sample; below it, it comes on top.
    double rounding = resolution.ofMean(settled.sd(), 0, Math.max(1, window.count()));
    double dip = Corners.dip(wave, from, to, wave.at(at), window.from(), window.to());
    double u = Root.of(rounding, tail, Corners.ramp(wave, at, 1), dip);
    return new Reading.Measured(absolute(wave.at(at), u), flags(window));
  }

  /** What to know of an extreme of the whole hold. */
  static List<String> flags(Window window) {
    return window.gapped() ? List.of("samples are missing elsewhere in the hold") : List.of();
  }

  /** Scatter about the trend of a window; 0 where it has no samples. */
  private CorrelatedScatter scatter(Window window) {
    if (window.count() == 0) {
      return new CorrelatedScatter(0, 0, 1);
    }
    LinearTrend trend = LinearTrend.of(wave, window.from(), window.to());
    return CorrelatedScatter.of(wave, window.from(), window.to(), trend);
  }
}
