package corewright.reports.ledger;

import corewright.reports.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;

/** A process of its own that writes to a ledger and says so after each write. */
public final class WritingProcess {
  private WritingProcess() {}

  /**
   * Writes decisions about one unit for ever, or as many as told, and prints a line after each.
   *
   * @param args file, chain, number of writes
   */
  public static void main(String[] args) {
    Clock clock = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
    try (Ledger ledger = Ledger.open(Path.of(args[0]), args[1], clock)) {
      String tag = Tags.of(1);
      for (int i = 0; i < Integer.parseInt(args[2]); i++) {
        ledger.decided(tag, Samples.pending(), args[1]);
        System.out.println("kept " + i);
      }
    }
  }

  /**
   * @param told file that gets a line for each write that was acknowledged
   */
  static Process start(Path file, String chain, int writes, Path told) throws IOException {
    return new ProcessBuilder(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                WritingProcess.class.getName(),
                file.toString(),
                chain,
                Integer.toString(writes)))
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .redirectOutput(told.toFile())
        .start();
  }

  /** How many writes were acknowledged; a last line that was cut off does not count. */
  static int acknowledged(Path told) throws IOException {
    String lines = Files.readString(told);
    return (int) lines.chars().filter(c -> c == '\n').count();
  }
}
