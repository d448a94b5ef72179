package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.station.cli.FigureFolder.Kind;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Each figure as a picture with its data beside it, and the tags behind every number. */
class FiguresCommandTest {
  @TempDir private Path folder;
  private final StringWriter err = new StringWriter();

  @Test
  void everyPictureHasItsDataBesideItAndTheTagsInIt() throws Exception {
    String tag =
        ok("receive", "--family=sd48", "--serial=R-77", "--customer=Orrel").substring(0, 8);
    ok("hold", tag, "--question=Which build is it?", "--owner=H. Oduya", "--due=2020-01-31");
    ok("confirm", tag, "joints");
    ok("deposit", "--customer=Orrel", "--amount=150.00", "--currency=EUR", "--about=exchange");
    Path out = folder.resolve("november");
    String said = ok("figures", "--charts", out.toString(), "--as", Kind.png.name());
    assertTrue(said.contains(tag) && said.contains("OVERDUE since 2020-01-31"), said);
    assertTrue(said.contains("together 150.00 EUR"), said);
    for (String name : List.of("confirmed-faults", "lifetimes", "open-questions")) {
      assertTrue(Files.size(out.resolve(name + ".png")) > 2000, name);
    }
    assertTrue(row(out, "confirmed-faults", 1).endsWith("," + tag + ","));
    assertTrue(row(out, "open-questions", 1).startsWith(tag + ",0,2020-01-31,yes,H. Oduya,"));
    assertTrue(row(out, "deposits-owed", 1).contains(",Orrel,150.0,EUR,"));
    assertEquals("months,at_risk,failed,in_service,low95,high95,tags", row(out, "lifetimes", 0));
    assertTrue(row(out, "in-work", 1).startsWith("pending,1,0,0," + tag));
    assertTrue(said.contains("pending: n = 1, median 0 d, oldest 0 d (" + tag + ")"), said);
    assertEquals(19, Files.list(out).filter(f -> f.toString().endsWith(".csv")).count());
    assertEquals(1, execute(new StringWriter(), "figures", "--charts", out.toString()));
    assertTrue(err.toString().contains("is there already"), err.toString());
  }

  private static String row(Path out, String name, int row) throws Exception {
    return Files.readAllLines(out.resolve(name + ".csv")).get(row);
  }

  private String ok(String... arguments) {
    StringWriter out = new StringWriter();
    assertEquals(0, execute(out, arguments), err.toString());
    return out.toString();
  }

  private int execute(StringWriter out, String... arguments) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    String[] all = Arrays.copyOf(arguments, arguments.length + 1);
    all[arguments.length] = "--shop=" + folder.resolve("shop");
    return line.execute(all);
  }
}
