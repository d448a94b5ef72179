package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** What every command promises, whichever it is. */
class EveryCommandTest {
  private static final char ESCAPE = 0x1B;
  private static final CommandLine LINE = Main.commandLine();

  /** They write a file or hold a bench open, and report nothing. */
  private static final Set<String> NO_REPORT =
      Set.of("template", "answers", "key", "practice", "serve");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  static Stream<String> commands() {
    return LINE.getSubcommands().keySet().stream().filter(c -> !c.equals("help"));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void helpHasExamplesAndExitCodesAndNoColourInAPipe(String command) {
    assertEquals(ExitCodes.DONE, run(command, "--help"));
    String help = out.toString().replaceAll("\\s+", " ");
    assertTrue(help.contains("Usage: corewright " + command), help);
    assertTrue(help.contains("Example"), help);
    ExitCodes.list().forEach((code, words) -> assertTrue(help.contains(words), help));
    assertFalse(help.indexOf(ESCAPE) >= 0, help);
    assertEquals("", err.toString());
  }

  /**
   * What is wrong stands on stderr with what to do; nothing on stdout may be taken for a result.
   */
  @ParameterizedTest
  @MethodSource("commands")
  void aWrongLineSaysWhatAndHowOnStderr(String command) {
    assertEquals(ExitCodes.USAGE, run(command, "--no-such-option"));
    assertEquals("", out.toString());
    String said = err.toString();
    assertTrue(said.contains("--no-such-option") || said.startsWith("Missing required"), said);
    assertTrue(said.contains("Usage: corewright " + command), said);
    assertFalse(said.indexOf(ESCAPE) >= 0, said);
  }

  @ParameterizedTest
  @MethodSource("commands")
  void whateverReportsDoesSoAsJsonToo(String command) {
    boolean json = LINE.getSubcommands().get(command).getCommandSpec().findOption("--json") != null;
    assertEquals(!NO_REPORT.contains(command), json);
  }

  /** Decimals are typed with a comma where this is used. */
  @Test
  void whatIsNoNumberSaysHowOneIsWritten() {
    assertEquals(ExitCodes.USAGE, run("safe", "U-000012", "--volts", "1,2"));
    assertTrue(err.toString().contains("'1,2' is no number; write it with a point"));
  }

  /** A file of which nothing was filled in is nobody's word. */
  @Test
  void whatNobodyHasFilledInIsNotTaken(@TempDir Path folder) throws IOException {
    assertEquals(ExitCodes.DONE, run("answers", "ref48"));
    Path file = Files.writeString(folder.resolve("core.json"), out.toString());
    String shop = folder.resolve("shop").toString();
    assertEquals(ExitCodes.REFUSED, run("receive", "--answers", file.toString(), "--shop", shop));
    assertTrue(err.toString().contains("/who: nobody has filled this in"), err.toString());
  }

  /** A command that the first page does not name is not found by anybody. */
  @Test
  void theReadmeNamesEveryCommand() throws IOException {
    String page = Files.readString(Path.of(System.getProperty("corewright.home"), "README.md"));
    commands()
        .forEach(
            c ->
                assertTrue(
                    page.matches("(?s).*`(corewright )?" + c + "[ `].*"), c + " is missing"));
  }

  @Test
  void withoutACommandTheListIsShown() {
    assertEquals(ExitCodes.DONE, run());
    commands().forEach(c -> assertTrue(out.toString().contains("  " + c + " "), c));
    String list = out.toString().replaceAll("\\s+", " ");
    ExitCodes.list().forEach((code, words) -> assertTrue(list.contains(code + " " + words), list));
  }

  @Test
  void aBenchFaultSaysNothingAboutTheUnit() {
    int code =
        new FaultWords()
            .handleExecutionException(
                new InstrumentFault("load", "*IDN?", "nothing came back", "Is it switched on?"),
                line(),
                null);
    assertEquals(ExitCodes.BENCH_FAULT, code);
    String said = err.toString();
    assertTrue(said.contains("load") && said.contains("Is it switched on?"), said);
    assertTrue(said.contains("Nothing is said about the unit."), said);
  }

  /** A fault of the program is no refusal: it has its own code and what to send on. */
  @Test
  void aFaultOfTheProgramSaysSo() throws Exception {
    int code =
        new FaultWords()
            .handleExecutionException(
                new IllegalStateException("a thing that cannot be"), line(), null);
    assertEquals(ExitCodes.PROGRAM_FAULT, code);
    assertTrue(err.toString().contains("a thing that cannot be"), err.toString());
  }

  /** A disk that is full or may not be written to is the place's, and no fault of the program. */
  @ParameterizedTest
  @MethodSource("disks")
  void whatADiskWouldNotDoIsRefusedWithARemedy(Exception fault, String what, String remedy) {
    assertEquals(ExitCodes.REFUSED, new FaultWords().handleExecutionException(fault, line(), null));
    assertEquals(what + ".\n" + remedy + "\n", err.toString());
  }

  static Stream<Arguments> disks() {
    String allow = "Allow whoever runs this to read and write there, or name another place.";
    return Stream.of(
        Arguments.of(
            new UncheckedIOException(
                "cannot write /a/b", new IOException("No space left on device")),
            "Cannot write /a/b: the disk is full",
            "Make room on it and try again."),
        Arguments.of(
            new UncheckedIOException("cannot make /a", new AccessDeniedException("/a/b")),
            "Cannot make /a (/a/b): that is not allowed",
            allow),
        Arguments.of(
            new FileSystemException("/a/b", null, "Read-only file system"),
            "/a/b: it can only be read from",
            "Name another place."),
        Arguments.of(
            new UncheckedIOException(new FileNotFoundException("/a/b (Permission denied)")),
            "/a/b: that is not allowed",
            allow));
  }

  private int run(String... arguments) {
    return line().execute(arguments);
  }

  private CommandLine line() {
    LINE.setOut(new PrintWriter(out, true));
    LINE.setErr(new PrintWriter(err, true));
    return LINE;
  }
}
