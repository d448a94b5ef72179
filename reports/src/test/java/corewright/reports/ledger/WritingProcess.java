package corewright.reports.ledger;

import corewright.reports.Samples;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
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

  static Process start(Path file, String chain, int writes) throws IOException {
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
        .start();
  }

  /** Counts what the process says it kept, up to {@code most}, or to its end. */
  static int acknowledged(Process process, int most) throws IOException {
    BufferedReader lines =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    int kept = 0;
    while (kept < most) {
      String line = lines.readLine();
      if (line == null || !line.matches("kept [0-9]+")) {
        return kept; // the last line may be cut off
      }
      kept++;
    }
    return kept;
  }
}
