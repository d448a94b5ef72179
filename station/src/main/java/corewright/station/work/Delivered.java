package corewright.station.work;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The texts of families and profiles that this program came with: who edits one has another text.
 */
final class Delivered {
  private static final String LIST = "delivered.txt";
  private static final List<Text> TEXTS = read();

  private Delivered() {}

  /**
   * One text.
   *
   * @param what as {@code profile sd48-ship}
   */
  record Text(String sha256, int revision, String what) {
    static Text of(String line) {
      String[] part = line.split(" ", 3);
      return new Text(part[0], Integer.parseInt(part[1]), part[2]);
    }

    String line() {
      return sha256 + " " + revision + " " + what;
    }
  }

  static List<Text> texts() {
    return TEXTS;
  }

  private static List<Text> read() {
    InputStream in = Delivered.class.getResourceAsStream(LIST);
    if (in == null) {
      throw new IllegalStateException(LIST + " is missing from the program");
    }
    try (BufferedReader lines =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return lines.lines().map(Text::of).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
