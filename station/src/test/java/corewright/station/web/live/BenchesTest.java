package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription;
import corewright.profiles.Catalogue;
import corewright.station.work.ShopFile;
import corewright.station.work.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The benches of a shop are what their files say today. */
class BenchesTest {
  private static final Path FIXTURES = Path.of(System.getProperty("corewright.home"), "fixtures");

  @TempDir private Path folder;

  /** The console stays open for weeks; a channel is calibrated on the command line meanwhile. */
  @Test
  void whatIsCalibratedCountsFromTheNextRunOnAndADialectIsNoBrokenBench() throws IOException {
    Path own = Files.createDirectories(folder.resolve("benches")).resolve("own.json");
    String first = Files.readString(FIXTURES.resolve("benches/emulated-sd48.json"));
    Files.writeString(own, first);
    Files.copy(FIXTURES.resolve("dialects/emulated-load.json"), own.resolveSibling("my-load.json"));
    Clock clock = Clock.system();
    try (Workshop shop =
            Workshop.open(Catalogue.ofHome(), folder, ShopFile.in(folder), "b", clock);
        Benches benches = new Benches(() -> shop, clock, false)) {
      assertEquals(1, benches.all().size());
      assertEquals(List.of(), benches.mistakes());
      assertEquals(1, now(benches).revision());
      Files.writeString(
          own,
          first
              .replace("\"revision\": 1", "\"revision\": 2")
              .replace(
                  "\"offset\": 0.012, \"calibration\": \"not calibrated\"",
                  "\"offset\": 0.002, \"calibration\": \"meter 4711, due 2027-11-29\""));
      assertEquals(2, now(benches).revision());
      assertEquals("meter 4711, due 2027-11-29", now(benches).channels().get(1).calibration());
      Files.writeString(own, first.replace("\"revision\": 1", "\"revision\": 3"));
      assertEquals(3, benches.all().get(0).description().revision());
      Files.writeString(own, "{");
      assertEquals(3, now(benches).revision()); // the last that could be read; its page says why
      assertEquals(1, benches.mistakes().size());
    }
  }

  private static BenchDescription now(Benches benches) {
    return benches.of("emulated-sd48").orElseThrow().description();
  }
}
