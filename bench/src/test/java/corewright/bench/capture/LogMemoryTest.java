package corewright.bench.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.log.Conclusion;
import corewright.bench.log.LogAnalysis;
import corewright.bench.log.LogFamily;
import corewright.bench.log.LogReading;
import corewright.bench.log.LogRequest;
import corewright.bench.log.table.Choices;
import corewright.bench.log.table.LogText;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log of any length takes the same memory. */
class LogMemoryTest {
  /** What is read in every build; the soak reads 200 MB. */
  private static final long SMALL_BYTES = 6_000_000;

  /** Live objects while a log is read, over what was there before, at most. */
  private static final long MOST_BYTES = 12_000_000;

  private static final int LINES_BETWEEN_LOOKS = 40_000;

  @TempDir private Path folder;

  @Test
  void aLongLogIsReadInFlatMemory() throws IOException {
    long size = Long.getLong("corewright.logs.bytes", SMALL_BYTES);
    Path file = folder.resolve("long.csv");
    int cranks = write(file, size);
    LogFamily family = new LogFamily("sd48", 48, 12.5, 10, 9);
    Watched watched = new Watched(LogFile.open(file));
    LogReading reading =
        LogAnalysis.of(
            watched,
            new LogRequest(Optional.of(family), List.of(family), Choices.none(), Optional.empty()));
    assertEquals(Conclusion.SUPPORTS_FAULT, reading.conclusion());
    assertEquals(cranks, reading.cranks().size());
    assertTrue(watched.looks > 2, "the memory was looked at");
    long most = watched.most - watched.before;
    assertTrue(most < MOST_BYTES, most + " bytes live while reading " + size);
    System.out.printf(
        Locale.ROOT,
        "long log: bytes=%d cranks=%d liveMB=%.1f%n",
        Files.size(file),
        cranks,
        most / 1e6);
  }

  /** Rest for 25 minutes, then six seconds of cranking, over and over; returns how many cranks. */
  private static int write(Path file, long bytes) throws IOException {
    int cranks = 0;
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      String header = "Time (s);RPM;Battery Voltage (V);Boost V;Coolant (°C);Remark\n";
      out.write(header);
      long written = header.length();
      for (long row = 0; written < bytes; row++) {
        double t = row / 10.0;
        double x = t % 1500 - 1480;
        boolean turns = x >= 0 && x < 6;
        cranks += turns && Math.abs(x) < 0.05 ? 1 : 0;
        String line =
            String.format(
                Locale.GERMANY,
                "%.1f;%d;%.2f;%.2f;%d;%s%n",
                t,
                turns ? 170 + row % 5 : 0,
                turns ? 10.6 + 0.1 * (row % 3) : 12.4 + 0.02 * (row % 2),
                turns ? 47.0 - 0.8 * x : 47.6 + 0.02 * (row % 3),
                -6,
                "=cmd|' /C calc'!A" + row % 9);
        out.write(line);
        written += line.length();
      }
    }
    return cranks;
  }

  /** The file, and how much was live on the heap while its lines went by. */
  private static final class Watched implements LogText {
    private final LogText file;
    private final long before;
    private long most;
    private int looks;

    Watched(LogText file) {
      this.file = file;
      this.before = live();
    }

    private static long live() {
      System.gc();
      Runtime all = Runtime.getRuntime();
      return all.totalMemory() - all.freeMemory();
    }

    @Override
    public String name() {
      return file.name();
    }

    @Override
    public <T> T lines(Function<Iterator<String>, T> use) {
      return file.lines(lines -> use.apply(new Looking(lines)));
    }

    private final class Looking implements Iterator<String> {
      private final Iterator<String> lines;
      private long seen;

      Looking(Iterator<String> lines) {
        this.lines = lines;
      }

      @Override
      public boolean hasNext() {
        return lines.hasNext();
      }

      @Override
      public String next() {
        if (++seen % LINES_BETWEEN_LOOKS == 0) {
          most = Math.max(most, live());
          looks++;
        }
        return lines.next();
      }
    }
  }
}
