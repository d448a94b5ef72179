package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.ledger.Tags;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What is refused has received no core on its way. */
class UnreceivedTest extends Commands {
  @Test
  void aWrongPasswordASlipAndAnotherFamilysProfileLeaveNoUnitBehind() throws Exception {
    String answers = answers(ANSWERS);
    String bench =
        Path.of(System.getProperty("corewright.home"), "fixtures/benches/emulated-sd48.json")
            .toString();
    refused(
        "is no step|has no step 'nostep'", bench, "ref48-steady", answers, "--hand=nostep=1±1,x");
    refused("Profile sd48-ship is for units of the family sd48", bench, "sd48-ship", answers, "");

    Path password = Files.writeString(folder.resolve("p"), "a long password\n");
    Path wrong = Files.writeString(folder.resolve("w"), "another one\n");
    assertEquals(
        0,
        run(
            "account",
            "A. Tester",
            "--role=owner",
            "--new-password-file=" + password,
            "--by=A. Tester",
            shop()),
        err.toString());
    refused("do not fit", bench, "ref48-steady", answers, "--password-file=" + wrong);
    assertEquals(
        ExitCodes.REFUSED,
        run(
            "measure",
            recorded("cap_loss_sw"),
            "--answers=" + answers,
            "--password-file=" + wrong,
            shop()),
        err.toString());
    nothingIsThere();
  }

  private void refused(String why, String bench, String profile, String answers, String more)
      throws Exception {
    assertEquals(
        ExitCodes.REFUSED,
        run(
            "run",
            "--bench=" + bench,
            "--profile=" + profile,
            "--answers=" + answers,
            "--confirmed-by=A. Tester",
            shop(),
            more.isEmpty() ? "--json" : more));
    assertTrue(err.toString().matches("(?s).*(" + why + ").*"), err.toString());
    nothingIsThere();
  }

  private void nothingIsThere() throws Exception {
    assertEquals(ExitCodes.REFUSED, run("show", Tags.of(1), shop()), out.toString());
    assertTrue(err.toString().contains("has the tag or serial"), err.toString());
  }

  private String shop() {
    return "--shop=" + folder.resolve("shop");
  }
}
