package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Source;
import corewright.station.web.place.Bench;
import org.junit.jupiter.api.Test;

/**
 * The three ways in which a shop takes a core, to their ends: the customer's own unit goes back to
 * the customer ({@link LifeCommandsTest}); an exchanged core settles its deposit and goes to stock;
 * a bought core goes to stock and is sold from it. Common practice, no source.
 */
class ThreeModesTest extends ShopCommands {
  @Test
  void anExchangedCoreSettlesItsDepositAndIsRebuiltToStock() throws Exception {
    String deposit =
        json("deposit", "--customer=Orrel", "--amount=150", "--about=U-1").at("/0/number").asText();
    String tag = rebuilt("exchange", "--customer=Orrel");
    assertEquals(1, json("deposit").size(), "a core that came does not settle what is owed");
    json("deposit", deposit, "--end=accepted", "--tag", tag, "--grade=B", "--credit=90");
    assertEquals(0, json("deposit").size());
    inStock(tag);
  }

  @Test
  void aBoughtCoreIsRebuiltToStockAndSoldFromIt() throws Exception {
    String tag = rebuilt("stock", "--customer=Core bank");
    inStock(tag);
    refused("\\[serial-stays]", "release", tag, "--serial=R-87");
    json("relabel", tag, "--serial=R-87", "--because=two digits were swapped");
    assertEquals(
        "shipped", json("release", tag, "--carrier=post", "--serial=R-87").get("stage").asText());
    assertTrue(json("board").at("/in stock").isEmpty(), "sold, and no longer in stock");
  }

  private String rebuilt(String mode, String... more) throws Exception {
    String tag =
        json("receive", "--family=ref48", "--serial=R-78", "--mode", mode, more[0])
            .get("tag")
            .asText();
    assertEquals("FAIL", measured(tag));
    json("safe", tag, "--volts=1");
    json("work", tag, "--open", "--did=Cleaned", "--close");
    Bench.passes(folder.resolve("shop"), tag, Source.BENCH);
    return tag;
  }

  private void inStock(String tag) throws Exception {
    json("seal", tag, "8120");
    json("move", "stock", tag);
    assertEquals(tag, json("board").at("/in stock/0/tag").asText(), out.toString());
  }
}
