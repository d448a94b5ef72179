package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** A command is found by its name without reading all the others, and is the same. */
class OneCommandTest {
  @Test
  void eachIsThereByItself() {
    CommandLine whole = Main.commandLine();
    for (String name : whole.getSubcommands().keySet()) {
      CommandLine one = Main.commandLine(name, "--help");
      if (!name.equals("help")) {
        assertEquals(Set.of(name), one.getSubcommands().keySet());
      }
      assertEquals(usage(whole, name), usage(one, name));
    }
  }

  @Test
  void whatIsNoCommandIsAnsweredByTheWhole() {
    Set<String> all = Main.commandLine().getSubcommands().keySet();
    assertEquals(all, Main.commandLine("--help").getSubcommands().keySet());
    assertEquals(all, Main.commandLine().getSubcommands().keySet());
    assertEquals(all, Main.commandLine("serv").getSubcommands().keySet());
  }

  private static String usage(CommandLine line, String name) {
    return line.getSubcommands().get(name).getUsageMessage();
  }
}
