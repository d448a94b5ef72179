package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Common practice, no source: a bench in doubt is locked by anybody, and freed in writing. */
class ShiftCommandTest extends Commands {
  @Test
  void aBenchIsLockedByHandAndUnlockedWithAReason() {
    String bench =
        Path.of(System.getProperty("corewright.home"), "fixtures/benches/emulated-sd48.json")
            .toString();
    String shop = "--shop=" + folder.resolve("shop");
    assertEquals(0, run("shift", "--bench", bench, "--study", shop));
    assertTrue(out.toString().contains("is not locked"), out.toString());
    assertTrue(out.toString().contains("Nothing to study: name two"), out.toString());
    assertEquals(3, run("shift", "--bench", bench, "--lock", "a lead was loose", shop, "--json"));
    assertTrue(out.toString().contains("a lead was loose"), out.toString());
    assertEquals(1, run("shift", "--bench", bench, "--unlock", " ", shop));
    assertTrue(err.toString().contains("without a reason"), err.toString());
    assertEquals(0, run("shift", "--bench", bench, "--unlock", "soldered", shop));
    assertEquals(1, run("shift", "--bench", bench, "--unlock", "again", shop));
    assertTrue(err.toString().contains("is not locked"), err.toString());
  }
}
