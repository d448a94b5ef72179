package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * A backup that the program of 25 November 2026 made, with schema 8: two units, a photograph, a
 * lot, a quote, a deposit, a hold, a teardown. Kept as it was written; never made anew.
 */
class OldBackupTest {
  private static final String HEAD = "counter:11:a5f28e7bc028e339";
  @TempDir private Path folder;
  private final StringWriter err = new StringWriter();

  @Test
  void aBackupOfAnOlderProgramComesBackAndGoesOn() throws Exception {
    Path backup = resource("backup-schema-8.zip");
    Path key = resource("backup-schema-8.pub");
    Path shop = folder.resolve("shop");
    assertTrue(
        ok("restore", backup.toString(), "--to=" + shop, "--head=" + HEAD)
            .startsWith("11 events restored"));
    String whole = ok("verify", shop.toString(), "--key=" + key, "--head=" + HEAD);
    assertTrue(whole.contains("11 events, 11 with a good signature"), whole);

    String board = ok("board", "--shop=" + shop);
    assertTrue(board.contains("Which build is it? (H. Oduya, until 2026-12-01)"), board);
    assertTrue(ok("find", "0698-114", "--shop=" + shop).contains("U-000012"));
    assertTrue(ok("lot", "--shop=" + shop).contains("20 of 20"));
    String figures = ok("figures", "--shop=" + shop);
    assertTrue(figures.contains("output capacitors: 1 of 1"), figures);
    assertTrue(figures.contains("together 150.00 EUR"), figures);
    ok("move", "quarantine", "U-00002Z", "--shop=" + shop);
    String after = ok("verify", shop.toString());
    assertTrue(after.contains("12 events, 12 with a good signature"), after);
  }

  private Path resource(String name) throws Exception {
    Path file = folder.resolve(name);
    try (InputStream in = OldBackupTest.class.getResourceAsStream(name)) {
      Files.copy(Objects.requireNonNull(in), file);
    }
    return file;
  }

  private String ok(String... arguments) {
    StringWriter out = new StringWriter();
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    assertEquals(0, line.execute(arguments), err.toString());
    return out.toString();
  }
}
