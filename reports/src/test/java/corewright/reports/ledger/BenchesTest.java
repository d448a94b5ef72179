package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is not known must not count as better than it is. */
class BenchesTest {
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);

  @TempDir private Path folder;

  @Test
  void whatDoesNotSayOfWhichBenchItIsPutsNeithersOwnOutOfForce() {
    try (Database database = Database.open(Urls.of(folder.resolve("ledger.db")))) {
      Benches benches =
          new Benches(database, new Appender(new Events("bench-1", CLOCK, Optional.empty())));
      old(database, "0.3");
      assertEquals(List.of("0.3"), contacts(benches, false), "all that there is");
      benches.measured("bench-1", false, "contacts", Map.of("ohm", "0.2"), "x");
      assertEquals(List.of("0.2"), contacts(benches, false), "measured since");
      old(database, "0.1");
      benches.measured("bench-1", true, "contacts", Map.of("ohm", "0.01"), "x");
      assertEquals(List.of("0.2", "0.1"), contacts(benches, false), "the worse one still counts");
      assertEquals(List.of("0.01"), contacts(benches, true));
    }
  }

  /** As it was written before the event carried the word. */
  private static void old(Database database, String ohm) {
    ObjectNode body =
        (ObjectNode) Json.tree(Map.of("what", "contacts", "found", Map.of("ohm", ohm)));
    Appender then = new Appender(new Events("bench-1", CLOCK, Optional.empty()));
    database.write(
        h -> then.append(h, "x", EventKind.BENCH_MEASURED, Benches.subject("bench-1"), body));
  }

  private static List<String> contacts(Benches benches, boolean emulated) {
    return benches.measured("bench-1", emulated).getOrDefault("contacts", List.of()).stream()
        .map(m -> m.found().path("ohm").asText())
        .toList();
  }
}
