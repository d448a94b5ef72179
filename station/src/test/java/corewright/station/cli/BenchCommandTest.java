package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A new bench, emulated, from its first question to its file. */
class BenchCommandTest {
  @TempDir private Path folder;

  @Test
  void aBenchIsCommissionedByAnsweringAndWrittenOnlyWhereItIsWiredWell() throws IOException {
    Path file = folder.resolve("own.json");
    Typing reversed =
        Typing.inShop(
            folder.resolve("shop"),
            "M. Reyes\n",
            "bench",
            "--emulate=sd48",
            "--miswired=output_reversed",
            "--out=" + file);
    assertEquals(ExitCodes.BENCH_FAULT, reversed.code(), reversed.err());
    assertTrue(reversed.out().contains("reads −10.000 ± 0.002 V"), reversed.out());
    assertTrue(
        reversed.out().contains("Swap the two sense leads of the output side"), reversed.out());
    assertFalse(Files.exists(file));
    assertTrue(reversed.err().contains("hot enough to burn"), reversed.err());

    String before =
        Files.readString(
                Path.of(System.getProperty("corewright.home"))
                    .resolve("fixtures/benches/emulated-sd48.json"))
            .replace("\"emulated-sd48\"", "\"practice-sd48\"");
    Files.writeString(file, before);
    int revision = Descriptions.bench(file).revision();
    Typing good =
        Typing.inShop(
            folder.resolve("shop"),
            "M. Reyes\n",
            "bench",
            "--emulate=sd48",
            "--trials=2",
            "--json",
            "--replace",
            "--out=" + file);
    assertEquals(0, good.code(), good.err());
    JsonNode json = good.json();
    assertTrue(json.get("emulated").asBoolean());
    assertEquals(2, json.get("trips_s").size());
    BenchDescription bench = Descriptions.bench(file);
    assertEquals(revision + 1, bench.revision()); // no two texts under one revision
    assertEquals(before, Files.readString(folder.resolve("own.json.before")));
    assertTrue(bench.title().startsWith("EMULATED"), bench.title());
    assertEquals("EF-SD48", bench.fixture().id()); // as the board says, not as anybody typed
    assertEquals(json.get("trip_s").asDouble(), bench.trip_s());
    assertEquals(7, bench.instruments().size());
    bench.channels().forEach(c -> assertEquals("not calibrated (emulated)", c.calibration()));

    Typing again = Typing.nothing("bench", "--emulate=sd48", "--out=" + file);
    assertEquals(ExitCodes.REFUSED, again.code());
    assertTrue(again.err().contains("--replace"), again.err());

    Typing nowhere =
        Typing.nothing("bench", "--emulate=sd48", "--out=" + folder.resolve("no/bench.json"));
    assertEquals(ExitCodes.REFUSED, nowhere.code());
    assertTrue(nowhere.err().startsWith("There is no folder "), nowhere.err());
  }

  /** From the first account on: whoever confirms the cautions shows first that it is they. */
  @Test
  void nothingIsEnergisedByAnybodyWhoHasNotSignedIn() throws IOException {
    Path shop = folder.resolve("guarded");
    Path password = Files.writeString(folder.resolve("p"), "a long password\n");
    Path wrong = Files.writeString(folder.resolve("w"), "another one\n");
    Typing made =
        Typing.inShop(
            shop,
            "",
            "account",
            "H. Oduya",
            "--role=owner",
            "--new-password-file=" + password,
            "--by=H. Oduya");
    assertEquals(0, made.code(), made.err());
    Path file = folder.resolve("guarded.json");
    Typing refused =
        Typing.inShop(
            shop,
            "",
            "bench",
            "--emulate=sd48",
            "--confirmed-by=H. Oduya",
            "--password-file=" + wrong,
            "--out=" + file);
    assertEquals(ExitCodes.REFUSED, refused.code(), refused.err());
    assertFalse(refused.out().contains("Wiring and scale"), refused.out());
    assertFalse(Files.exists(file));
  }
}
