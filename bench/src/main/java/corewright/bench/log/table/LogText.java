package corewright.bench.log.table;

import java.util.Iterator;
import java.util.function.Function;

/**
 * A log as lines of text, to be gone through as often as needed: nothing of it is held in memory.
 * Lines come without their ends, in order, the first one is line 1.
 */
public interface LogText {

  /** The file's name, for messages. */
  String name();

  /** Hands the lines to {@code use}; they are good until it returns. Calls may nest. */
  <T> T lines(Function<Iterator<String>, T> use);

  /** A text that is already in memory. CR, LF and CR LF end a line. */
  static LogText of(String name, String text) {
    return new LogText() {
      @Override
      public String name() {
        return name;
      }

      @Override
      public <T> T lines(Function<Iterator<String>, T> use) {
        return use.apply(text.lines().iterator());
      }
    };
  }
}
