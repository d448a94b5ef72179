package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Paper about a unit whose record was imported: what its record supports, and what it does not. */
class PaperCommandsTest extends Commands {
  @BeforeEach
  void aFailingUnit() throws Exception {
    String file = recorded("ilim_low_avg");
    String answers = "--answers=" + answers(ANSWERS);
    assertEquals(0, inShop("measure", file, "--tag=T-1", answers), err.toString());
  }

  @Test
  void eachPaperThatTheRecordSupportsIsWrittenAndKeptInTheLedger() throws Exception {
    for (String[] command :
        new String[][] {
          {"letter", "T-1"},
          {"label", "T-1", "--size=62x29"},
          {"sheet", "T-1", "--for=rebuild"},
          {"sheet", "T-1", "--for=fitting"},
          {"sheet", "T-1", "--for=mark"}
        }) {
      assertEquals(0, inShop(command), err.toString());
      assertTrue(Files.size(Path.of(out.toString().strip())) > 5_000, out.toString());
    }
    assertEquals(0, inShop("letter", "T-1", "--json"));
    assertEquals("letter", new ObjectMapper().readTree(out.toString()).get("kind").asText());
  }

  @Test
  void whatTheRecordDoesNotSupportIsRefusedWithWhatToDo() {
    assertEquals(1, inShop("warranty", "T-1"));
    assertTrue(
        err.toString().contains("was not rebuilt on this visit. Write down"), err.toString());
    assertEquals(1, inShop("label", "T-1", "--leaving"));
    assertEquals(1, inShop("label", "T-1", "--size=1x1"));
    assertTrue(err.toString().contains("Choose one of 50x25, 62x29, 100x50, 100x150"));
    assertEquals(1, inShop("letter", "T-2"));
    assertEquals(2, inShop("sheet", "T-1", "--for=nothing"));
  }

  @Test
  void whatTheTypeLacksIsSaidBeforeThePaperIsWritten() throws Exception {
    Files.writeString(
        folder.resolve("shop/shop.json"), "{\"name\": \"京 Rebuild\", \"address\": \"Street 1\"}");
    assertEquals(0, inShop("letter", "T-1", "--json"), err.toString());
    String said = "has no 京 (U+4EAC), which stands in the shop's own words (shop.json).";
    assertTrue(err.toString().contains(said), err.toString());
    assertTrue(
        new ObjectMapper().readTree(out.toString()).at("/cautions/0").asText().contains(said));
  }

  @Test
  void aColourOrALogoThatCannotBeUsedIsRefusedAndStopsNothingElse() throws Exception {
    shop("\"colour\": \"#C00000\"");
    assertEquals(1, inShop("letter", "T-1"));
    assertTrue(
        err.toString()
            .contains("shop.json:2: /colour: #C00000 cannot be the shop's colour: its hue is red"),
        err.toString());
    shop("\"logo\": \"logo.png\"");
    assertEquals(1, inShop("letter", "T-1"));
    assertTrue(
        err.toString().contains("logo.png: logo: it cannot be read. See that"), err.toString());
    assertEquals(0, inShop("show", "T-1"), err.toString());
    shop("\"colour\": \"#5B2A86\"");
    assertEquals(0, inShop("letter", "T-1"), err.toString());
  }

  private void shop(String line) throws Exception {
    Files.writeString(
        folder.resolve("shop/shop.json"),
        "{\"name\": \"Mill Yard\", \"address\": \"Street 1\",\n" + line + "}");
  }

  private int inShop(String... words) {
    String[] all = Arrays.copyOf(words, words.length + 1);
    all[words.length] = "--shop=" + folder.resolve("shop");
    return run(all);
  }
}
