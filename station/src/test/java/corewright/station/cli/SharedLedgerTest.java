package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** A shop that grows from one bench to two: one line in its folder decides where its ledger is. */
class SharedLedgerTest {
  private static EmbeddedPostgres server;
  @TempDir private Path folder;
  private final StringWriter err = new StringWriter();

  @BeforeAll
  static void start() throws Exception {
    server = EmbeddedPostgres.start();
  }

  @AfterAll
  static void stop() throws Exception {
    server.close();
  }

  @Test
  void twoBenchesWorkInOneLedgerAndABackupOfItIsAFile() throws Exception {
    Path shop = folder.resolve("shop");
    Path second = folder.resolve("second");
    String url = server.getJdbcUrl("postgres", "postgres");
    String first = ok("receive", "--family=sd48", "--serial=R-77", "--shop=" + shop);
    assertEquals(1, run("share", url + "&password=x", "--shop=" + shop));
    assertTrue(err.toString().contains(".pgpass"), err.toString());
    String moved = ok("share", url, "--shop=" + shop);
    assertTrue(moved.startsWith("3 events moved, whole"), moved);

    Files.createDirectories(second);
    Files.writeString(second.resolve("ledger.url"), url + "\n");
    String other = ok("receive", "--family=sd48", "--serial=R-78", "--shop=" + second);
    assertTrue(ok("find", "R-77", "--shop=" + second).contains(first.substring(0, 8)));
    assertTrue(ok("find", "R-78", "--shop=" + shop).contains(other.substring(0, 8)));
    for (String place : new String[] {shop.toString(), second.toString(), url}) {
      assertTrue(ok("verify", place).contains("5 events, 5 with a good signature"));
    }

    Path old = shop.resolve("ledger.db");
    assertTrue(ok("verify", old.toString()).contains("3 events"));
    Path backup = folder.resolve("backup.zip");
    ok("backup", backup.toString(), "--shop=" + shop);
    Path restored = folder.resolve("restored");
    assertTrue(ok("restore", backup.toString(), "--to=" + restored).startsWith("5 events"));
    ok("receive", "--family=sd48", "--serial=R-79", "--shop=" + restored);
    assertTrue(ok("verify", restored.toString()).contains("7 events"));
    assertTrue(ok("verify", shop.toString()).contains("5 events"), "the shared one is untouched");
  }

  private String ok(String... arguments) {
    StringWriter out = new StringWriter();
    assertEquals(0, execute(out, arguments), err.toString());
    return out.toString();
  }

  private int run(String... arguments) {
    return execute(new StringWriter(), arguments);
  }

  private int execute(StringWriter out, String... arguments) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    return line.execute(arguments);
  }
}
