package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The record of one imported run, verified from the command line as a customer's expert would. */
class VerifyCommandTest extends Commands {
  private Path shop = Path.of("");
  private JsonNode outcome = new ObjectMapper().createObjectNode();

  @BeforeEach
  void oneImportedRun() throws Exception {
    shop = folder.resolve("shop");
    assertEquals(
        0,
        run(
            "measure",
            recorded("ilim_low_avg"),
            "--tag=T-1",
            "--answers=" + answers(ANSWERS),
            "--shop=" + shop,
            "--json"),
        err.toString());
    outcome = new ObjectMapper().readTree(out.toString());
  }

  @Test
  void theHeadOnTheDocumentAndTheExportedKeyProveTheRecord() throws Exception {
    Path key = folder.resolve("signing.pub");
    assertEquals(0, run("key", "--shop=" + shop, "--out=" + key));
    String head = printedHead();
    assertEquals(0, run("verify", shop.toString(), "--key=" + key, "--head=" + head, "--json"));
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertTrue(json.get("whole").asBoolean());
    assertTrue(json.get("keysFromOutside").asBoolean());
    assertEquals(json.get("events").asLong(), json.get("signed").asLong());
    assertTrue(json.at("/heads/0").asText().startsWith("import:"), json.toString());

    // everything after the head, and each trace of it, is taken away
    sql("DELETE FROM event WHERE sequence > 2");
    sql(
        "UPDATE chain SET sequence = 2, hash = (SELECT hash FROM event WHERE sequence = 2 AND chain"
            + " = 'import')");
    assertEquals(0, run("verify", shop.toString(), "--key=" + key), out.toString());
    assertEquals(4, run("verify", shop.toString(), "--key=" + key, "--head=" + head));
    assertTrue(
        out.toString().startsWith("NOT AS IT WAS WRITTEN, first at: the chain import ends at 2"));
  }

  @Test
  void aChangedReadingIsNamedAndTheExitCodeSaysSo() throws Exception {
    sql("UPDATE event SET body = replace(body, '43.28', '47.28') WHERE kind = 'run ended'");
    assertEquals(4, run("verify", shop.resolve("ledger.db").toString()));
    String said = out.toString();
    assertTrue(said.contains("first at: event import:"), said);
    assertTrue(said.contains("(run ended, T-1): was changed"), said);
    assertEquals(4, run("verify", shop.toString(), "--json"));
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertFalse(json.get("whole").asBoolean());
    assertEquals(json.get("first"), json.at("/broken/0"));
  }

  /** The record holds their hashes: a waveform is evidence as long as nobody can change it. */
  @Test
  void aChangedWaveformAndAMissingPhotographAreNamed() throws Exception {
    Path photo = Files.writeString(folder.resolve("label.jpg"), "picture");
    assertEquals(0, run("attach", "T-1", photo.toString(), "--shop=" + shop), err.toString());
    assertEquals(0, run("verify", shop.toString(), "--files"), out.toString());
    assertTrue(out.toString().contains("3 files are the ones that the record names"), "" + out);
    String path = outcome.at("/run/capture").asText();
    Path capture = shop.resolve(path);
    byte[] bytes = Files.readAllBytes(capture);
    bytes[bytes.length / 2] ^= 1;
    Files.write(capture, bytes);
    try (Stream<Path> kept = Files.list(shop.resolve("files"))) {
      Files.delete(kept.findFirst().orElseThrow());
    }
    Files.delete(Path.of(outcome.get("document").asText()));
    assertEquals(0, run("verify", shop.toString()), "the events are as they were");
    assertEquals(4, run("verify", shop.toString(), "--files"));
    String said = out.toString();
    assertTrue(said.contains("0 files are the ones"), said);
    assertTrue(said.contains("NOT AS IT WAS KEPT: " + path + " of T-1"), said);
    assertTrue(said.contains("MISSING: files/2cea274d"), said); // sha256sum of the seven bytes
    assertTrue(said.contains("it can be written again"), said);
    assertEquals(1, run("verify", shop.resolve("ledger.db").toString(), "--files"));
  }

  @Test
  void anAmendmentStandsBesideTheRunAndNamesIt() throws Exception {
    String id = outcome.at("/run/id").asText();
    assertEquals(
        0,
        run(
            "amend",
            id,
            "--text=Supply 2 was used.",
            "--reason=typo",
            "--by=A. T.",
            "--shop=" + shop));
    assertEquals(0, run("show", "T-1", "--shop=" + shop, "--json"));
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals("Supply 2 was used.", json.at("/amendments/0/text").asText());
    assertEquals(64, json.at("/amendments/0/original").asText().length());
    assertEquals(outcome.at("/run/findings"), json.at("/runs/0/findings"));
    assertEquals(0, run("verify", shop.toString()), out.toString());
    assertEquals(1, run("amend", "none", "--text=x", "--reason=y", "--by=z", "--shop=" + shop));
    assertTrue(err.toString().contains("No run none was closed"), err.toString());
  }

  @Test
  void whatIsNoLedgerIsRefusedWithARemedy() {
    assertEquals(1, run("verify", folder.resolve("nothing").toString()));
    assertTrue(err.toString().contains("There is no ledger"), err.toString());
    assertEquals(1, run("verify", shop.toString(), "--head=nonsense"));
    assertTrue(err.toString().contains("is not the head of a chain"), err.toString());
  }

  private String printedHead() throws Exception {
    try (PDDocument pdf = Loader.loadPDF(Path.of(outcome.get("document").asText()).toFile())) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      java.util.regex.Matcher line =
          java.util.regex.Pattern.compile("Record up to (import:[0-9]+:[0-9a-f]{16})")
              .matcher(text);
      assertTrue(line.find(), text);
      return line.group(1);
    }
  }

  /** As somebody would who has the file but not the key. */
  private void sql(String statement) throws Exception {
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + shop.resolve("ledger.db"));
        Statement sql = connection.createStatement()) {
      sql.execute("DROP TRIGGER IF EXISTS event_is_never_changed");
      sql.execute("DROP TRIGGER IF EXISTS event_is_never_removed");
      sql.execute(statement);
    }
  }
}
