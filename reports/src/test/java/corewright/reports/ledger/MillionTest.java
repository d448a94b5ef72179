package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Units are found, and told who else is at risk, however many there are. {@code
 * -Dmillion.units=1000000} makes it a soak; {@code -Dmillion.folder=FOLDER} keeps the file.
 */
class MillionTest {
  private static final int MANY = 1000;
  @TempDir private Path folder;

  @Test
  void whatIsLookedForIsFoundInAMoment() throws Exception {
    long units = Long.getLong("million.units", 120);
    long shared = Long.getLong("million.shared", 60);
    String kept = System.getProperty("million.folder", folder.toString());
    Path file = Files.createDirectories(Path.of(kept)).resolve("ledger.db");
    String url = Kept.POSTGRESQL.url(folder);
    String figures =
        "units="
            + units
            + measured(Kept.SQLITE, Urls.of(file), units, "")
            + " postgres_units="
            + shared
            + measured(Kept.POSTGRESQL, url + "&reWriteBatchedInserts=true", shared, "postgres_");
    if (Long.getLong("million.units") != null) {
      Files.writeString(Files.createDirectories(Path.of("target")).resolve("million.txt"), figures);
    }
  }

  private String measured(Kept kept, String url, long units, String name) throws Exception {
    kept.make(url);
    Path scratch = Files.createDirectory(folder.resolve("one-" + kept));
    new Crowd(url, units).fill(scratch, unit -> progress(kept, unit, units));
    try (Ledger ledger = Ledger.open(url, "reader", Clock.systemUTC(), Optional.empty())) {
      if (units < MANY) {
        asTheLedgerItselfWouldHaveWrittenIt(ledger, url);
      }
      double[] first = lookups(ledger, units, 10); // while the program is not warm yet
      double[] lookups = lookups(ledger, units, 11);
      double[] dossiers = pages(ledger, units);
      double[] siblings = siblings(ledger, units);
      return " %sfirst_lookup_p99_ms=%s %slookup_p99_ms=%s %spage_p99_ms=%s %ssiblings_ms=%s"
          .formatted(
              name,
              p99(first),
              name,
              p99(lookups),
              name,
              p99(dossiers),
              name,
              round(siblings[siblings.length - 1]));
    }
  }

  /** The crowd is worth measuring only as long as its rows are what the events say. */
  private static void asTheLedgerItselfWouldHaveWrittenIt(Ledger ledger, String url) {
    Verification found = ledger.verify();
    assertTrue(found.whole(), found.broken().toString());
    List<String> before = new Raw(url).views();
    ledger.custody().rebuildViews();
    assertEquals(before, new Raw(url).views());
  }

  private static double[] lookups(Ledger ledger, long units, int seed) {
    Random random = new Random(seed);
    double[] ms = new double[units < MANY ? 40 : 2000];
    for (int i = 0; i < ms.length; i++) {
      long unit = 1 + (long) (random.nextDouble() * units);
      String tag = Crowd.tag(unit);
      String serial = Crowd.serial(unit);
      String asked =
          switch (i % 4) {
            case 0 -> tag;
            case 1 -> serial;
            case 2 -> serial.substring(4);
            default -> mistyped(tag);
          };
      long start = System.nanoTime();
      List<Found> found = ledger.find(asked);
      ms[i] = (System.nanoTime() - start) / 1e6;
      assertTrue(found.stream().anyMatch(f -> f.tag().equals(tag)), asked + " is " + tag);
    }
    return ms;
  }

  /** What a page about one unit asks for. */
  private static double[] pages(Ledger ledger, long units) {
    Random random = new Random(12);
    double[] ms = new double[units < MANY ? 10 : 500];
    for (int i = 0; i < ms.length; i++) {
      String tag = Crowd.tag(1 + (long) (random.nextDouble() * units));
      long start = System.nanoTime();
      assertEquals(tag, ledger.dossier(tag).core().tag());
      assertEquals(tag, ledger.lives().standing(tag).tag());
      assertTrue(ledger.lives().history(tag).size() > 0);
      ms[i] = (System.nanoTime() - start) / 1e6;
    }
    return ms;
  }

  private static double[] siblings(Ledger ledger, long units) {
    double[] ms = new double[units < MANY ? 2 : 40];
    for (int i = 0; i < ms.length; i++) {
      long unit = 7 + 50 * (i * (units / 50) / ms.length);
      long start = System.nanoTime();
      Map<String, List<Found>> shared = ledger.siblings(Crowd.tag(unit));
      ms[i] = (System.nanoTime() - start) / 1e6;
      assertEquals(3, shared.size(), shared.keySet().toString());
      assertTrue(shared.get("lot " + Crowd.lot(unit)).size() > 1);
    }
    Arrays.sort(ms);
    return ms;
  }

  /** One digit is another. */
  private static String mistyped(String tag) {
    char digit = tag.charAt(4);
    return tag.substring(0, 4) + (digit == '9' ? '0' : (char) (digit + 1)) + tag.substring(5);
  }

  private static String p99(double[] ms) {
    Arrays.sort(ms);
    return round(ms[(int) Math.ceil(0.99 * ms.length) - 1]);
  }

  private static String round(double ms) {
    return String.format(Locale.ROOT, "%.2f", ms);
  }

  /** Onto the terminal that was named, and nowhere else: a log is no place for a bar. */
  private static void progress(Kept kept, long unit, long units) {
    String terminal = System.getProperty("million.terminal", "");
    if (terminal.isEmpty()) {
      return;
    }
    String bar =
        String.format(Locale.ROOT, "\r%s %3d %% of %d units", kept, 100 * unit / units, units);
    try {
      Files.writeString(Path.of(terminal), bar, StandardOpenOption.APPEND);
    } catch (IOException gone) {
      throw new UncheckedIOException("no terminal " + terminal, gone);
    }
  }
}
