package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
    int before = events(ok("verify", shop.toString()));
    assertEquals(before + 1, events(ok("share", url, "--shop=" + shop)), "and the move itself");

    Files.createDirectories(second);
    Files.writeString(second.resolve("ledger.url"), url + "\n");
    String other = ok("receive", "--family=sd48", "--serial=R-78", "--shop=" + second);
    assertTrue(ok("find", "R-77", "--shop=" + second).contains(first.substring(0, 8)));
    assertTrue(ok("find", "R-78", "--shop=" + shop).contains(other.substring(0, 8)));
    int shared = before + 1 + before;
    for (String place : new String[] {shop.toString(), second.toString(), url}) {
      assertTrue(ok("verify", place).contains(shared + " events, " + shared + " with a good"));
    }

    assertEquals(before + 1, events(ok("verify", shop.resolve("ledger.db").toString())));
    Path backup = folder.resolve("backup.zip");
    ok("backup", backup.toString(), "--shop=" + shop);
    Path restored = folder.resolve("restored");
    assertEquals(shared, events(ok("restore", backup.toString(), "--to=" + restored)));
    ok("receive", "--family=sd48", "--serial=R-79", "--shop=" + restored);
    assertEquals(shared + before, events(ok("verify", restored.toString())));
    assertEquals(shared, events(ok("verify", shop.toString())), "the shared one is untouched");
  }

  private static int events(String said) {
    Matcher number = Pattern.compile("(\\d+) events").matcher(said);
    assertTrue(number.find(), said);
    return Integer.parseInt(number.group(1));
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
