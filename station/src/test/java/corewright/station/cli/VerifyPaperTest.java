package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What somebody is told who brings a document to be checked. */
class VerifyPaperTest extends Commands {
  @Test
  void aFileThatIsNoDocumentIsToldSo() throws Exception {
    Path file = Files.writeString(folder.resolve("letter.pdf"), "dear customer");
    assertEquals(ExitCodes.BROKEN_RECORD, run("verify", file.toString()));
    assertTrue(
        out.toString().startsWith("NOT AS IT WAS SIGNED: It cannot be read"), out.toString());
    assertTrue(out.toString().contains("ask the shop for the document again"), out.toString());
    assertTrue(out.toString().contains("specimen of an emulated run"), out.toString());
    assertFalse(out.toString().contains("Whose key"), "there is none to ask about");
  }

  @Test
  void anImportedRunGetsNoCertificate() throws Exception {
    String shop = "--shop=" + folder.resolve("shop");
    String answers = "--answers=" + answers(ANSWERS);
    assertEquals(0, run("measure", recorded("ilim_low_avg"), "--tag=T-1", answers, shop));
    assertEquals(1, run("certificate", "T-1", shop));
    assertTrue(err.toString().contains("not measured on a bench of this shop"), err.toString());
  }
}
