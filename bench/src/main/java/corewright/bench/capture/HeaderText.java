package corewright.bench.capture;

import corewright.bench.port.Digitizer.Channel;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The header of a raw capture as lines of tab-separated words, so that {@code head} shows it. */
final class HeaderText {

  private HeaderText() {}

  static String write(CaptureHeader header) {
    StringBuilder text = new StringBuilder();
    line(text, "rate_Hz", Double.toString(header.rate_Hz()));
    for (Channel c : header.channels()) {
      line(
          text,
          "channel",
          c.name(),
          c.unit(),
          Double.toString(c.lsb()),
          Double.toString(c.offset()));
    }
    header.feeds().forEach(feed -> line(text, "feed", feed));
    header.notes().forEach((name, value) -> line(text, "note", name, value));
    return text.toString();
  }

  /**
   * @throws IllegalArgumentException naming the line that makes no sense
   */
  static CaptureHeader read(String text) {
    double rate_Hz = 0;
    List<Channel> channels = new ArrayList<>();
    List<String> feeds = new ArrayList<>();
    SortedMap<String, String> notes = new TreeMap<>();
    for (String line : text.lines().toList()) {
      String[] words = line.split("\t", -1);
      switch (words[0] + words.length) {
        case "rate_Hz2" -> rate_Hz = Double.parseDouble(words[1]);
        case "channel5" ->
            channels.add(
                new Channel(
                    words[1],
                    words[2],
                    Double.parseDouble(words[3]),
                    Double.parseDouble(words[4])));
        case "feed2" -> feeds.add(words[1]);
        case "note3" -> notes.put(words[1], words[2]);
        default -> throw new IllegalArgumentException("header line '" + line + "' is not known");
      }
    }
    if (!(rate_Hz > 0) || channels.isEmpty()) {
      throw new IllegalArgumentException("the header names no rate or no channel");
    }
    return new CaptureHeader(rate_Hz, channels, feeds, notes);
  }

  private static void line(StringBuilder text, String... words) {
    for (int i = 0; i < words.length; i++) {
      text.append(i == 0 ? "" : "\t").append(word(words[i]));
    }
    text.append('\n');
  }

  /** A text that keeps its place between tabs. */
  static String word(String text) {
    return text.replaceAll("[\t\r\n]", " ");
  }
}
