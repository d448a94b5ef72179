package corewright.station.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * The command line as a person types it, in a folder of its own; what each command says is kept
 * apart from what the one before said.
 */
abstract class Commands {
  /** About a core of the family that the captures are of. */
  static final String ANSWERS =
      """
      {"who": "A. Tester",
       "received": {"family": "ref48", "serial": "R-77", "label": "REF", "customer": "Nobody"},
       "cues": {}, "checklist": {}, "agreed": {"approval": "approved"}}
      """;

  @TempDir Path folder;
  final StringWriter out = new StringWriter();
  final StringWriter err = new StringWriter();

  /** The exit code. */
  int run(String... words) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    return line.execute(words);
  }

  /** An answers file in the folder, by its name. */
  String answers(String text) throws IOException {
    return Files.writeString(folder.resolve("answers.json"), text).toString();
  }

  /** The file of a recorded capture, by its name. */
  static String recorded(String capture) {
    return Path.of(System.getProperty("corewright.home"), "fixtures", "captures", capture)
        .resolve("capture.csv.gz")
        .toString();
  }
}
