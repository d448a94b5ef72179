package corewright.station.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WhatItDidTest {
  private final HostileShop.Made made = HostileShop.shared();
  private final Visit visit = HostileShop.owner();

  WhatItDidTest() throws IOException {}

  /** The record sinks to 44 V by its formula, where 46.5 V are asked for: 2.5 V below. */
  @Test
  void saysTheSentenceTheVerdictAndTheFindingsOfARun() {
    assertEquals("/did/" + made.run(), FirstDayTest.location(visit.get("/did/" + made.tag())));
    String page = visit.get("/did/" + made.run()).body();
    assertTrue(page.contains("<b>FAIL</b>"), page);
    assertTrue(page.contains("<b>44.00"), page);
    assertTrue(page.contains("46.50"), page);
    assertTrue(page.contains("−2.50"), page);
    assertTrue(page.contains("under 0.01"), page);
    assertTrue(page.contains("simple acceptance"), page);
    assertTrue(page.contains("Limits of family sd48: as delivered, not signed"), page);
    assertTrue(page.contains("It certifies nothing"), "an imported record: " + page);
    assertTrue(visit.get("/did").body().contains("/did/" + made.run()));
  }

  @Test
  void noTextOfTheRecordBecomesPartOfThePage() {
    for (String path : new String[] {"/did", "/did/" + made.run()}) {
      String page = visit.get(path).body();
      assertFalse(page.contains(HostileShop.SCRIPT), path);
      assertFalse(page.contains("<img src=x"), path);
    }
    assertTrue(visit.get("/did/" + made.run()).body().contains("&lt;script&gt;"));
  }

  @Test
  void drawsTheCurvesInTheColoursOfTheScreen() {
    HttpResponse<String> light = visit.get("/did/" + made.run() + "/picture");
    assertEquals("image/svg+xml", light.headers().firstValue("Content-Type").orElse(""));
    assertEquals("nosniff", light.headers().firstValue("X-Content-Type-Options").orElse(""));
    assertTrue(light.body().contains("stroke=\"#8C3D12\""), "copper is the output");
    String dark = visit.get("/did/" + made.run() + "/picture?mode=dark").body();
    assertTrue(dark.contains("stroke=\"#EAA06A\""), "copper is lighter in the dark");
    assertFalse(dark.contains("fill=\"white\""));
  }

  @Test
  void refusesWhatIsNoRun() {
    for (String which :
        new String[] {
          "..%2f..%2fledger.db", "..%2Fcaptures", "%2e%2e", "nothing-1", made.run() + "%00.svg"
        }) {
      for (String end : new String[] {"", "/picture"}) {
        int status = visit.get("/did/" + which + end).statusCode();
        assertTrue(status == 422 || status == 400 || status == 404, which + end + ": " + status);
      }
    }
    assertEquals(422, visit.get("/did/" + made.untested()).statusCode());
  }

  @Test
  void addsASentenceBesideTheRunAndOnlyWithAReason() {
    String path = "/did/" + made.run() + "/amend";
    visit.get("/did/" + made.run());
    assertEquals(
        422, visit.post(path, Map.of("text", "The leads were long", "reason", "")).statusCode());
    assertEquals(
        "/did/" + made.run(),
        FirstDayTest.location(
            visit.post(path, Map.of("text", "The leads were long", "reason", "Seen later"))));
    assertTrue(visit.get("/did/" + made.run()).body().contains("The leads were long"));
  }
}
