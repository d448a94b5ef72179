package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What somebody is told who brings a document to be checked. */
class VerifyPaperTest {
  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void aFileThatIsNoDocumentIsToldSo() throws Exception {
    Path file = Files.writeString(folder.resolve("letter.pdf"), "dear customer");
    assertEquals(ExitCodes.BROKEN_RECORD, run("verify", file.toString()));
    assertTrue(
        out.toString().startsWith("NOT AS IT WAS SIGNED: It cannot be read"), out.toString());
    assertTrue(out.toString().contains("ask the shop for the document again"), out.toString());
  }

  @Test
  void anImportedRunGetsNoCertificate() throws Exception {
    Path answers =
        Files.writeString(
            folder.resolve("answers.json"),
            """
            {"who": "A. Tester",
             "received": {"family": "ref48", "serial": "R-77", "label": "REF", "customer": "N."},
             "cues": {}, "checklist": {}, "agreed": {"approval": "approved"}}
            """);
    String shop = "--shop=" + folder.resolve("shop");
    String record =
        Path.of(System.getProperty("corewright.home"), "fixtures/captures/ilim_low_avg")
            .resolve("capture.csv.gz")
            .toString();
    assertEquals(0, run("measure", record, "--tag=T-1", "--answers=" + answers, shop));
    assertEquals(1, run("certificate", "T-1", shop));
    assertTrue(err.toString().contains("not measured on a bench of this shop"), err.toString());
  }

  private int run(String... arguments) {
    out.getBuffer().setLength(0);
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    return line.execute(arguments);
  }
}
