package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ServeCommandTest {
  @TempDir private Path shop;

  @Test
  void aLookOpensAsksAndLeaves() {
    StringWriter out = new StringWriter();
    CommandLine line = Main.commandLine().setOut(new PrintWriter(out, true));
    assertEquals(ExitCodes.DONE, line.execute("serve", "--look", "--shop", shop.toString()));
    assertTrue(
        out.toString().matches("(?s)first: \\d{4,} bytes.*look.css: \\d{4,} bytes.*"),
        out.toString());
  }
}
