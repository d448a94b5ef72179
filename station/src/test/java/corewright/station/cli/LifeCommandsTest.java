package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import corewright.bench.record.Source;
import corewright.station.web.place.Bench;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** One unit from the counter to its claim, as a person types it. */
class LifeCommandsTest extends ShopCommands {
  @Test
  void fromTheCounterToTheClaim() throws Exception {
    String answers = answers(ANSWERS);
    String tag = json("receive", "--answers", answers, "--grade", "B").get("tag").asText();
    assertEquals("FAIL", measured(tag));
    refused(
        "unit is in one place|was received before",
        "receive",
        "--answers=" + answers,
        "--tag",
        tag);
    refused("not discharged and verified", "work", tag, "--open");
    refused("still holds 31", "safe", tag, "--volts", "31");
    json("safe", tag, "--volts", "1.2");
    json("lot", "lot-7", "--part", "2200 uF 63 V", "--quantity", "3");
    JsonNode closed =
        json(
            "work",
            tag,
            "--open",
            "--part",
            "C1=2200 uF 63 V@LOT-7:1180 uF",
            "--did",
            "Cleaned",
            "--close");
    assertEquals("closed", closed.get("stage").asText());
    assertEquals(2, json("lot").at("/0/remaining").asInt());

    refused("no seal without a final test", "seal", tag, "8120");
    Bench.passes(folder.resolve("shop"), tag, Source.BENCH);
    assertEquals("sealed", json("seal", tag, "8120", "--mark", "dot").get("stage").asText());
    JsonNode left = json("release", tag, "--carrier", "post");
    assertEquals("shipped", left.get("stage").asText());
    assertEquals(
        LocalDate.parse(left.get("warrantyFrom").asText()).plusMonths(12).toString(),
        left.get("warrantyUntil").asText());
    assertTrue(Files.isRegularFile(Path.of(left.get("document").asText())));
    String certified = text(json("certificate", tag).get("document").asText());

    json("claim", tag, "--symptom", "dies when hot", "--asked", "hours=120");
    json("receive", "--answers", answers, "--tag", tag);
    String[] close = {
      "claim",
      tag,
      "--close",
      "--identity=ours",
      "--seal=intact",
      "--cause=none",
      "--evidence=photo"
    };
    refused("Find out a test as returned", close);
    assertEquals("FAIL", measured(tag));
    refused("Find out which group failed", close);
    List<String> complete = new ArrayList<>(List.of(close));
    complete.add("--group=same");
    assertEquals("W1", json(complete.toArray(String[]::new)).at("/0/class").asText());

    JsonNode history = json("history", tag);
    assertEquals("received", history.at("/0/kind").asText());
    assertEquals("claim closed", history.get(history.size() - 1).get("kind").asText());
    assertEquals(0, run("claim", tag, "--report"), err.toString());
    String paper = out.toString().lines().reduce((a, b) -> b).orElseThrow();
    assertTrue(Files.size(Path.of(paper)) > 20_000, paper);
    aCopyYearsLaterSaysTheSame(tag, certified);
  }

  /** The unit was back since, the record has grown, and the shop has another name. */
  private void aCopyYearsLaterSaysTheSame(String tag, String certified) throws Exception {
    String shop = folder.resolve("shop").toString();
    Files.writeString(
        folder.resolve("shop/shop.json"),
        "{\"name\": \"Another name\", \"address\": \"Elsewhere\"}");
    String copy = json("certificate", tag, "--visit=1").get("document").asText();
    assertEquals(certified, text(copy));
    Matcher head = Pattern.compile("Record up to (\\S+);").matcher(certified);
    assertTrue(head.find(), certified);
    assertEquals(0, run("verify", shop, "--head=" + head.group(1)), out.toString());
    assertTrue(text(json("letter", tag).get("document").asText()).contains("Another name"));
    refused("has had 2 visits, and not 3", "certificate", tag, "--visit=3");
  }

  private static String text(String pdf) throws Exception {
    try (PDDocument document = Loader.loadPDF(Path.of(pdf).toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("[\\s\u00A0]+", " ");
    }
  }

  @Test
  void openQuestionsStandOnTheBoardWithTheOverdueOnesMarked() throws Exception {
    String tag = json("receive", "--family=ref48", "--serial=R-78").get("tag").asText();
    json("hold", tag, "--question", "Whose is it?", "--owner", "counter", "--due", "2020-01-31");
    JsonNode board = json("board");
    assertEquals("Whose is it?", board.at("/pending/0/question").asText());
    assertTrue(board.at("/pending/0/overdue").asBoolean());
    json("move", "quarantine", tag, "--reason", "suspect serial");
    assertEquals(tag, json("board").at("/quarantine/0/tag").asText());
    refused("takes a reason, and a second person", "move", "scrap", tag, "--reason", "burnt");
    json("move", "back", tag, "--reason", "wrong tag");
    assertEquals(tag, json("board").at("/pending/0/tag").asText());
  }

  @Test
  void aQuoteBringsItsApprovalToTheUnitAndADepositIsOwed() throws Exception {
    String number =
        json("quote", "--customer=Orrel", "--family=ref48", "--price=180", "--fee=45")
            .at("/0/number")
            .asText();
    assertEquals(number, json("quote").at("/0/number").asText());
    String tag =
        json("receive", "--family=ref48", "--serial=R-78", "--customer=Orrel", "--quote", number)
            .get("tag")
            .asText();
    assertEquals(0, json("quote").size());
    json("quote", number, "--approved-by", "Mr Orrel", "--channel", "mail");
    JsonNode last = json("history", tag);
    assertEquals(
        "approved",
        last.get(last.size() - 1).at("/body/answers/0/answer").asText(),
        last.toString());
    refused("180,50 EUR", "quote", "--customer=Orrel", "--family=ref48", "--price=180,50");

    String deposit =
        json("deposit", "--customer=Orrel", "--amount=150", "--about=U-1").at("/0/number").asText();
    assertEquals(deposit, json("deposit").at("/0/number").asText());
    refused(
        "not what grade B brings",
        "deposit",
        deposit,
        "--end=accepted",
        "--tag",
        tag,
        "--grade=B",
        "--credit=10");
    json("deposit", deposit, "--end=accepted", "--tag", tag, "--grade=B", "--credit=90");
    assertEquals(0, json("deposit").size());
  }

  /** The bench of the example has no port: what is refused before that was not opened. */
  private void above60VoltsTheSecondPersonProvesWhoTheyAre(Path owners) throws Exception {
    String by = "--by=H. Oduya";
    String with = "--password-file=" + owners;
    Path second = Files.writeString(folder.resolve("second.txt"), "eight blue kettles\n");
    json("account", "T. Okafor", "--role=counter", "--new-password-file=" + second, by, with);
    String tag = json("receive", "--family=ie110", "--serial=R-79", by, with).get("tag").asText();
    List<String> run =
        List.of(
            "run",
            "--bench="
                + Path.of(System.getProperty("corewright.home"))
                    .resolve("fixtures/benches/emulated-ie110.json"),
            "--profile=ie110-arrival",
            "--tag=" + tag,
            "--confirmed-by=H. Oduya",
            with,
            "--second=t. okafor");
    for (Path file : List.of(owners, second)) {
      List<String> words = new ArrayList<>(run);
      words.add("--second-password-file=" + file);
      int code = run(words.toArray(String[]::new));
      assertEquals(file.equals(owners) ? 1 : ExitCodes.BENCH_FAULT, code, err.toString());
      assertEquals(file.equals(owners), err.toString().contains("do not fit"), err.toString());
      assertEquals(file.equals(second), err.toString().contains("no such port"), err.toString());
    }
  }

  @Test
  void whatIsRefusedAtTheCounterLeavesNoUnitBehind() throws Exception {
    String tag = json("receive", "--family=ref48", "--serial=R-78").get("tag").asText();
    String[] again = {"receive", "--family=ref48", "--serial=r 78"};
    refused("is known: " + tag + ", identified. Go on with " + tag, again);
    refused("There is no quote", "receive", "--family=ref48", "--serial=R-79", "--quote=R-00009");
    refused("does not come in as 'gift'", "receive", "--family=ref48", "--mode=gift");
    refused("Nobody said whose 10 it is", "deposit", "--amount=10");
    refused("Nobody said whose 10 it is", "quote", "--price=10");
    refused("Nothing was asked for", "find");
    refused("No day lies from 2026-12-01", "figures", "--from=2026-12-01", "--until=2026-01-01");
    Path nowhere = Files.writeString(folder.resolve("plain"), "").resolve("x/b.zip");
    refused(
        "Cannot write .*b.zip: a file is where a folder should be. Name another place.",
        "backup",
        nowhere.toString());
    refused("does not come in as 'gift'", "quote", "--customer=O", "--family=ref48", "--mode=gift");
    assertEquals(1, json("board").get("identified").size());
    refused("2020-01-31 is over", "promise", tag, "--until=2020-01-31");
    json("promise", tag, "--until=2999-12-31");
    String other =
        json("receive", "--family=sd48", "--serial=R-78", "--namesake", "--mode=test only")
            .get("tag")
            .asText();
    assertEquals(2, json("find", "R-78").size());
    JsonNode decided = json("decide", other).get("decision");
    assertEquals("D20", decided.get("row").asText());
    assertFalse(decided.get("question").asText().contains("Everything outside"), "nobody looked");
  }

  @Test
  void inAShopWithAccountsAStepNeedsItsPersonsPassword() throws Exception {
    String tag = json("receive", "--family=ref48", "--serial=R-78").get("tag").asText();
    Path password = Files.writeString(folder.resolve("owner.txt"), "seven red boats\n");
    String[] owner = {"--by=H. Oduya", "--password-file=" + password};
    json("account", "H. Oduya", "--role=owner", "--new-password-file=" + password, owner[0]);
    for (int i = 0; i < 6; i++) { // and not a sixth of them shuts anybody out
      refused(
          "no password was given for H. Oduya. Give --pass", "safe", tag, "--volts=1", owner[0]);
    }
    Path wrong = Files.writeString(folder.resolve("wrong.txt"), "seven red votes\n");
    refused("do not fit", "safe", tag, "--volts=1", owner[0], "--password-file=" + wrong);
    json("safe", tag, "--volts=1", owner[0], owner[1]);
    assertEquals("owner", json("account", owner[0], owner[1]).at("/0/role").asText());
    above60VoltsTheSecondPersonProvesWhoTheyAre(password);
  }

  @Test
  void filesAreKeptOnceUnderTheirHash() throws Exception {
    String tag = json("receive", "--family=ref48", "--serial=R-78").get("tag").asText();
    Path photo = Files.writeString(folder.resolve("label.jpg"), "picture");
    // sha256sum of the seven bytes
    String expected = "2cea274d0bedc39ec4ab6ba9e59ec889e3ed6fb56a1cf088a64d9b383378dc97";
    String hash = json("attach", tag, photo.toString(), photo.toString()).at("/1/sha256").asText();
    assertEquals("picture", Files.readString(folder.resolve("shop/files").resolve(hash)));
    assertEquals(expected, hash);
    refused("There is no file", "attach", tag, folder.resolve("none.jpg").toString());
    refused("There is no unit", "attach", "U-00099", photo.toString());
  }
}
