package corewright.measures.meter;

import corewright.measures.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a channel cannot see: beyond its ends, and between its steps. Said of the run, since a
 * reading taken there may be wrong without looking so.
 */
final class Sight {
  /** A channel is at an end where it stays there for this many samples in a row. */
  private static final int IN_A_ROW = 4;

  /** ... and as a whole for more than this part of a window, */
  private static final double OFTEN = 1e-3;

  /** ... and the end is this many times as full as the step next to it, as no tail of noise is. */
  private static final double PILED_UP = 4;

  /** A waveform that moves by fewer steps has ends by itself. */
  private static final int FEWEST_STEPS = 12;

  /** A step that is a smaller part of the level than this concerns nobody. */
  private static final double WORTH_SAYING = 1e-4;

  private Sight() {}

  static List<String> notes(String name, Channel channel, List<Window> windows) {
    List<String> notes = new ArrayList<>();
    for (int h = 0; h < windows.size(); h++) {
      Window window = windows.get(h);
      if (window.unread().isEmpty() && clipped(channel, window)) {
        notes.add(
            "In hold "
                + h
                + " the channel "
                + name
                + " stays at one end of what occurs:"
                + " it may be clipped, and then mean, ripple and extremes are wrong.");
      }
    }
    for (int h = 0; h < windows.size(); h++) {
      Window window = windows.get(h);
      if (window.unread().isEmpty() && coarse(channel, window)) {
        notes.add(
            "In hold "
                + h
                + " the channel "
                + name
                + " moves by less than its step of "
                + step(channel)
                + ": ripple and scatter below that are not seen, and its mean is as good as the"
                + " step.");
        return notes; // once is enough
      }
    }
    return notes;
  }

  private static boolean clipped(Channel channel, Window window) {
    Waveform wave = channel.wave();
    int low = Integer.MAX_VALUE;
    int high = Integer.MIN_VALUE;
    for (int i = window.from(); i < window.to(); i++) {
      low = Math.min(low, wave.codeAt(i));
      high = Math.max(high, wave.codeAt(i));
    }
    long step = Math.max(1, Math.round(channel.resolution().step() / wave.lsb()));
    if (high - (long) low < FEWEST_STEPS * step) {
      return false;
    }
    return piled(wave, window, high, -step) || piled(wave, window, low, step);
  }

  private static boolean piled(Waveform wave, Window window, int end, long inwards) {
    int at = 0;
    int next = 0;
    int row = 0;
    int longest = 0;
    for (int i = window.from(); i < window.to(); i++) {
      int code = wave.codeAt(i);
      row = code == end ? row + 1 : 0;
      longest = Math.max(longest, row);
      at += code == end ? 1 : 0;
      next += code == end + inwards ? 1 : 0;
    }
    return longest >= IN_A_ROW && at > OFTEN * window.count() && at > PILED_UP * next;
  }

  /** Two neighbouring steps or fewer in the whole window. */
  private static boolean coarse(Channel channel, Window window) {
    Waveform wave = channel.wave();
    int low = Integer.MAX_VALUE;
    int high = Integer.MIN_VALUE;
    for (int i = window.from(); i < window.to(); i++) {
      low = Math.min(low, wave.codeAt(i));
      high = Math.max(high, wave.codeAt(i));
    }
    double range = wave.lsb() * ((double) high - low);
    double level = Math.max(1, Math.abs(wave.at(window.from())));
    return channel.resolution().step() > WORTH_SAYING * level
        && range <= channel.resolution().step() * 1.5;
  }

  private static String step(Channel channel) {
    return String.format(
        Locale.ROOT, "%.3g %s", channel.resolution().step(), channel.wave().unit().symbol());
  }
}
