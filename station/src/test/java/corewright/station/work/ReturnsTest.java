package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.VisitFact;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What came back, and what is still out, counted by hand and as published. */
class ReturnsTest extends CountedShop {
  @Test
  void theWeibullLineIsRefusedThroughThreePoints() {
    for (int i = 0; i < 3; i++) {
      rebuilt("U-" + i, "A1", "SHIPPED", true, "2026-01-10");
      claim("U-" + i, "2026-0" + (3 + i) + "-10", "W1");
    }
    rebuilt("U-9", "A1", "SHIPPED", true, "2026-02-10");
    Returns.Line line = figures().weibull();
    assertEquals(3, line.failures());
    assertEquals(1, line.inService());
    assertEquals(Optional.empty(), line.shape());
    assertTrue(line.refused().contains("at least 5 failures, there are 3"), line.refused());
  }

  @Test
  void unitsInTheFieldAndClaimsThatWereNotTheUnitsOwnAreSuspensions() {
    for (int i = 0; i < 6; i++) {
      rebuilt("U-" + i, "A1", "SHIPPED", true, "2026-01-10");
      claim("U-" + i, "2026-0" + (2 + i) + "-10", i == 5 ? "W3" : "W2");
    }
    rebuilt("U-9", "A1", "SHIPPED", true, "2026-02-10");
    Returns.Line line = figures().weibull();
    assertEquals(5, line.failures());
    assertEquals(2, line.inService());
    assertTrue(line.shapeInterval().orElseThrow().contains(line.shape().orElseThrow()));
    assertTrue(line.scale_months().orElseThrow() > 5, "six of seven lasted less than six months");
  }

  @Test
  void theShipMonthTableCountsMonthsInServiceAndWhatIsStillOut() {
    rebuilt("U-1", "A1", "SHIPPED", true, "2026-08-15");
    rebuilt("U-2", "A1", "SHIPPED", true, "2026-08-20");
    rebuilt("U-3", "A1", "SHIPPED", true, "2026-09-01");
    claim("U-1", "2026-09-14", "W2");
    claim("U-2", "2026-11-20", "");
    List<Returns.Month> table = figures().returns();
    assertEquals(
        List.of(
            new Returns.Month(
                "2026-08", 2, Map.of(0, List.of("U-1"), 3, List.of("U-2")), List.of(), 0),
            new Returns.Month("2026-09", 1, Map.of(), List.of(), 1)),
        table);
    assertEquals(
        new Rate("back within 30 days", List.of("U-1"), List.of("U-2", "U-3")),
        figures().early().get(0));
    assertEquals(2, figures().early().get(1).n(), "U-3 has not been out for 90 days");
  }

  /** U-1 was out for 31 days when it came for something else; U-2 failed after 90. */
  @Test
  void whoComesAgainWithoutAClaimWasInServiceUpToThen() {
    rebuilt("U-1", "A1", "SHIPPED", true, "2026-01-10");
    rebuilt("U-2", "A1", "SHIPPED", true, "2026-01-10");
    claim("U-2", "2026-04-10", "W1");
    VisitFact v = visit("U-1", 2, "A1", "repair", "Orrel", "SHIPPED", true, "2026-11-01");
    visits.add(
        new VisitFact(
            v.tag(),
            v.visit(),
            v.family(),
            v.variant(),
            v.mode(),
            v.customer(),
            LocalDate.of(2026, 2, 10),
            v.disposition(),
            v.arrival(),
            v.firstShip(),
            v.shipBench(),
            v.technician(),
            v.sealed(),
            v.stage(),
            v.shipped(),
            v.cold(),
            v.hot(),
            v.promised()));
    assertEquals(
        List.of(
            new Returns.Month("2026-01", 2, Map.of(3, List.of("U-2")), List.of("U-1"), 0),
            new Returns.Month("2026-11", 1, Map.of(), List.of(), 1)),
        figures().returns());
    assertEquals(1, figures().survival().get(0).atRisk(), "U-1 was here when U-2 failed");
  }

  /**
   * The 6-MP arm of Gehan's remission times, one week as one of our months: 9 failures and 12 that
   * are still in service (Venables and Ripley, Modern Applied Statistics with S; R's survival
   * package gives the same shares, and 1.3537 and 33.765 for the Weibull line).
   */
  @Test
  void theSurvivalAndTheWeibullLineAreThePublishedOnes() {
    int[] failed = {6, 6, 6, 7, 10, 13, 16, 22, 23};
    int[] inService = {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35};
    for (int i = 0; i < failed.length; i++) {
      LocalDate left = TODAY.minusDays(1200);
      rebuilt("F-" + i, "A1", "SHIPPED", true, left.toString());
      claim("F-" + i, left.plusDays(days(failed[i])).toString(), "W2");
    }
    for (int i = 0; i < inService.length; i++) {
      LocalDate left = TODAY.minusDays(days(inService[i]));
      rebuilt("S-" + i, "A1", "SHIPPED", true, left.toString());
    }
    ShopFigures figures = figures();
    double[] share = {.857143, .806723, .752941, .690196, .627451, .537815, .448179};
    int[] atRisk = {21, 17, 15, 12, 11, 7, 6};
    assertEquals(share.length, figures.survival().size());
    for (int i = 0; i < share.length; i++) {
      assertEquals(share[i], figures.survival().get(i).share(), 1e-6);
      assertEquals(atRisk[i], figures.survival().get(i).atRisk());
    }
    assertEquals(List.of("F-0", "F-1", "F-2"), figures.survival().get(0).tags());
    Returns.Line line = figures.weibull();
    assertEquals(1.3537, line.shape().orElseThrow(), 0.003);
    assertEquals(33.765, line.scale_months().orElseThrow(), 0.05);
  }

  private static long days(int months) {
    return Math.round(months * 365.25 / 12);
  }

  /** New York is 5 h behind: a claim of 01:30 UTC was opened on the evening before. */
  @Test
  void aClaimIsOfTheDayThatItWasInTheShop() {
    VisitFact left = visit("U-1", 1, "A1", "repair", "Orrel", "SHIPPED", true, "2026-09-01");
    Claim claim = new Claim("U-1", 1, 1, "2026-10-02T01:30:00Z", "x", "2027-01-01", "W1", "", "");
    Returns here =
        new Returns(List.of(left), List.of(), List.of(claim), TODAY, ZoneId.of("America/New_York"));
    assertEquals(List.of("U-1"), here.within(30).hits());
    Returns utc = new Returns(List.of(left), List.of(), List.of(claim), TODAY, ZoneOffset.UTC);
    assertEquals(List.of("U-1"), utc.within(30).others());
  }
}
