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

  /** What the process is busy with when it dies. */
  enum Work {
    /** Decisions about one unit, for ever or as many as told. */
    WRITE,
    /** The same, with a whole copy of the ledger after each. */
    BACKUP,
    /** Bringing an old ledger up to date, then one decision. */
    MIGRATE
  }

  /**
   * Prints a line after each write that was acknowledged, and the name of each finished copy.
   *
   * @param args file, chain, number of writes, work
   */
  public static void main(String[] args) {
    Clock clock = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
    Path file = Path.of(args[0]);
    Work work = Work.valueOf(args[3]);
    SigningKey key = new KeyFolder(file.resolveSibling("")).key();
    System.err.println("begins");
    try (Ledger ledger = Ledger.open(file, args[1], clock, key)) {
      String tag = Tags.of(1);
      for (int i = 0; i < Integer.parseInt(args[2]); i++) {
        ledger.decided(tag, Samples.pending(), args[1]);
        System.out.println("kept " + i);
        if (work == Work.BACKUP) {
          Path copy = file.resolveSibling("copy-" + args[1] + "-" + i + ".db");
          ledger.custody().copyTo(copy);
          System.out.println(copy);
        }
      }
    }
  }

  /**
   * @param told file that gets a line for each write that was acknowledged
   */
  static Process start(Path file, String chain, int writes, Path told) throws IOException {
    return start(file, chain, writes, told, Work.WRITE);
  }

  static Process start(Path file, String chain, int writes, Path told, Work work)
      throws IOException {
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
                Integer.toString(writes),
                work.name()))
        .redirectError(told.resolveSibling(told.getFileName() + ".begun").toFile())
        .redirectOutput(told.toFile())
        .start();
  }

  /** Every line that the process got out; a last line that was cut off does not count. */
  static List<String> lines(Path told) throws IOException {
    String text = Files.readString(told);
    return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
  }

  /** How many writes were acknowledged. */
  static int acknowledged(Path told) throws IOException {
    return (int) lines(told).stream().filter(line -> line.startsWith("kept ")).count();
  }

  /** Whether the process has come to its ledger. */
  static boolean hasBegun(Path told) throws IOException {
    return Files.readString(told.resolveSibling(told.getFileName() + ".begun")).contains("begins");
  }
}
