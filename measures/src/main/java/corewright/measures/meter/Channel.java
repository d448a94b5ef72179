package corewright.measures.meter;

import corewright.measures.ChannelDoubt;
import corewright.measures.Measurement;
import corewright.measures.Reading;
import corewright.measures.Waveform;
import corewright.measures.wave.Resolution;
import corewright.measures.wave.Tail;
import corewright.measures.wave.WindowStatistics;

/**
 * A waveform with what is known about the channel it came through.
 *
 * @param doubt gain and offset, the same in all holds of a run
 */
record Channel(Waveform wave, double sampleRate_Hz, ChannelDoubt doubt, Resolution resolution) {

  static Channel of(Waveform wave, double sampleRate_Hz, ChannelDoubt doubt) {
    return new Channel(wave, sampleRate_Hz, doubt, Resolution.of(wave));
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

  /** Lowest raw sample of a stretch. */
  Reading lowest(int from, int to) {
    double lowest = WindowStatistics.of(wave, from, to).minimum();
    double u = Root.of(resolution.ofOne(), Tail.of(wave, from, to).ofLowest());
    Measurement measured = absolute(lowest, u);
    return Reading.of(measured.value(), measured.u(), measured.unit());
  }
}
