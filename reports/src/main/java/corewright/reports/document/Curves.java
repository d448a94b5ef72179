package corewright.reports.document;

import static java.nio.charset.StandardCharsets.UTF_8;

import corewright.measures.Capture;
import corewright.measures.Waveform;
import java.util.Locale;

/**
 * The curves of a run as a table that any program opens: extremes of each bin, never an average.
 */
final class Curves {
  private static final int MOST_ROWS = 2000;

  private Curves() {}

  /** Columns: time of the bin's first sample, then lowest and highest of each channel. */
  static byte[] csv(Capture capture) {
    StringBuilder text = new StringBuilder("time_s,output_min_V,output_max_V");
    for (Capture.Feed feed : capture.feeds()) {
      String name = feed.name().replaceAll("[^A-Za-z0-9]", "_");
      text.append(',').append(name).append("_min_V,").append(name).append("_max_V");
    }
    capture.load().ifPresent(load -> text.append(",load_min_A,load_max_A"));
    text.append('\n');
    int bin = Math.max(1, (capture.size() + MOST_ROWS - 1) / MOST_ROWS);
    for (int from = 0; from < capture.size(); from += bin) {
      int to = Math.min(capture.size(), from + bin);
      text.append(String.format(Locale.ROOT, "%.6f", from / capture.sampleRate_Hz()));
      extremes(text, capture.output(), from, to);
      for (Capture.Feed feed : capture.feeds()) {
        extremes(text, feed.voltage(), from, to);
      }
      if (capture.load().isPresent()) {
        extremes(text, capture.load().get(), from, to);
      }
      text.append('\n');
    }
    return text.toString().getBytes(UTF_8);
  }

  private static void extremes(StringBuilder text, Waveform wave, int from, int to) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = from; i < to; i++) {
      low = Math.min(low, wave.at(i));
      high = Math.max(high, wave.at(i));
    }
    text.append(String.format(Locale.ROOT, ",%.4f,%.4f", low, high));
  }
}
