package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Life;
import corewright.bench.life.Stage;
import corewright.measures.statistics.Interval;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.Deposits.Deposit;
import corewright.reports.ledger.Facts.Confirmed;
import corewright.reports.ledger.Money;
import corewright.reports.ledger.Standing;
import corewright.reports.ledger.VisitFact;
import corewright.station.work.ShopFigures.Period;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A shop counted by hand. */
class ShopFiguresTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final Period ALWAYS = new Period(Optional.empty(), Optional.empty(), false);

  private final List<VisitFact> visits = new ArrayList<>();
  private final List<Claim> claims = new ArrayList<>();

  @Test
  void yieldCountsFinishedRebuildsOnlyAndNamesTheirTags() {
    rebuilt("U-1", "A1", "SHIPPED", true, "2026-10-01");
    rebuilt("U-2", "A1", "IN_STOCK", true, "");
    rebuilt("U-3", "A1", "SCRAPPED", false, "");
    rebuilt("U-4", "A1", "OPEN", false, "");
    rebuilt("U-5", "A2", "SHIPPED", true, "2026-10-01");
    List<Rate> yield = figures().yield();
    assertEquals(
        List.of(
            new Rate("sd48 A1", List.of("U-1", "U-2"), List.of("U-3")),
            new Rate("sd48 A2", List.of("U-5"), List.of())),
        yield);
    // Wilson for 1 of 1: low end n/(n + z^2) = 1/(1 + 1.959964^2)
    Interval one = yield.get(1).interval().orElseThrow();
    assertEquals(0.20654, one.low(), 1e-5);
    assertEquals(1, one.high(), 0);
  }

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

  @Test
  void suppliersAreRankedOnlyWhereThereAreEnough() {
    for (int i = 0; i < 20; i++) {
      stock("Few & Co", "Z", i < 2, i);
      stock("Good", "G", i < 15, i);
      stock("Bad", "B", i < 5, i);
    }
    visits.removeIf(v -> v.customer().equals("Few & Co") && v.visit() >= 2);
    assertEquals(
        List.of("Good", "Bad", "Few & Co"), figures().suppliers().stream().map(Rate::of).toList());
  }

  @Test
  void aPeriodIsOneOfReceptionOrOfShipment() {
    rebuilt("U-1", "A1", "SHIPPED", true, "2026-10-01");
    rebuilt("U-2", "A1", "OPEN", false, "");
    LocalDate first = LocalDate.of(2026, 10, 1);
    Period received = new Period(Optional.of(first), Optional.empty(), false);
    Period shipped = new Period(Optional.of(first), Optional.of(first), true);
    assertEquals(0, of(received).turnaround_days().n());
    assertEquals(1, of(shipped).turnaround_days().n());
    assertEquals(Optional.of(275L), of(shipped).turnaround_days().median());
  }

  @Test
  void confirmedFaultsComeMostFrequentFirst() {
    rebuilt("U-1", "A1", "OPEN", false, "");
    rebuilt("U-2", "A1", "OPEN", false, "");
    rebuilt("U-3", "A1", "OPEN", false, "");
    ShopFigures figures =
        ShopFigures.of(
            visits,
            visits,
            claims,
            List.of(
                new Confirmed("U-1", 1, "joints", "capacitors"),
                new Confirmed("U-2", 1, "capacitors", "capacitors"),
                new Confirmed("U-3", 1, "capacitors", "")),
            ALWAYS,
            TODAY,
            ZoneOffset.UTC);
    assertEquals(List.of("capacitors", "joints"), figures.faults().stream().map(Rate::of).toList());
    assertEquals(new Rate("", List.of("U-2"), List.of("U-1", "U-3")), figures.predicted());
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

  @Test
  void aSupplierIsJudgedByWhatBecameOfItsCores() {
    for (int i = 1; i <= 4; i++) {
      stock("Good", "G", i <= 3, i);
    }
    visits.add(visit("G-9", 1, "A1", "stock", "Good", "SCRAPPED", false, ""));
    visits.add(visit("G-8", 1, "A1", "stock", "Good", "SHIPPED", true, "2026-10-01"));
    claim("G-8", "2026-11-01", "W1");
    Scorecard card = figures().scorecards().get(0);
    assertEquals(6, card.cores());
    assertEquals(4, card.sellable().hits().size());
    assertEquals(List.of("G-9"), card.unusable().hits());
    assertEquals(new Rate("", List.of("G-8"), List.of()), card.claimed());
    assertEquals(Optional.of(275L), card.days_to_sell());
  }

  @Test
  void whatWasExpectedStandsBesideWhatWasConfirmed() {
    rebuilt("U-1", "A1", "OPEN", false, "");
    rebuilt("U-2", "A1", "OPEN", false, "");
    ShopFigures figures =
        ShopFigures.of(
            visits,
            visits,
            claims,
            List.of(new Confirmed("U-1", 1, "joints", "caps"), new Confirmed("U-2", 1, "caps", "")),
            ALWAYS,
            TODAY,
            ZoneOffset.UTC);
    assertEquals(
        Map.of(
            "joints", Map.of("caps", List.of("U-1")), "caps", Map.of("(nothing)", List.of("U-2"))),
        figures.expected());
  }

  @Test
  void openQuestionsStandByAgeAndDepositsTogether() {
    OpenToday open =
        OpenToday.of(
            List.of(
                waiting("U-1", "2026-11-20T08:00:00Z", "2026-11-30"),
                waiting("U-2", "2026-10-25T08:00:00Z", "2026-11-24")),
            List.of(deposit("D-1", 15000), deposit("D-2", 2050)),
            List.of(),
            TODAY,
            ZoneOffset.UTC);
    assertEquals(
        List.of("U-2", "U-1"), open.questions().stream().map(OpenToday.Question::tag).toList());
    assertEquals(31, open.questions().get(0).age_days());
    assertTrue(open.questions().get(0).overdue());
    assertEquals("170.50 EUR", String.valueOf(open.owed().get("EUR")));
    assertEquals(List.of(new InWork(Stage.PENDING, 5, 31, List.of("U-2", "U-1"))), open.work());
  }

  /** Four of the shop's own were sold in 56 days, one in 14: three last 42, with two cores 70. */
  @Test
  void stockLastsAsLongAsItIsSoldAtThePaceOfLate() {
    for (int i = 1; i <= 4; i++) {
      String mode = i < 4 ? "stock" : "exchange";
      visits.add(visit("S-" + i, 1, "A1", mode, "Bank", "SHIPPED", true, "2026-11-01"));
      visits.add(visit("R-" + i, 1, "A1", "repair", "Orrel", "SHIPPED", true, "2026-11-01"));
    }
    visits.add(visit("N-1", 1, "A1", "stock", "Bank", "SHIPPED", false, "2026-11-01"));
    List<VisitFact> stocked = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      stocked.add(visit("U-" + i, 1, "A1", "stock", "Bank", "IN_STOCK", i <= 3, ""));
    }
    stocked.add(visit("U-6", 1, "A2", "stock", "Bank", "IN_STOCK", true, ""));
    List<Cover> cover = Cover.of(stocked, visits);
    assertEquals(
        new Cover(
            "sd48 A1",
            List.of("U-1", "U-2", "U-3"),
            List.of("U-4", "U-5"),
            List.of("S-1", "S-2", "S-3", "S-4")),
        cover.get(0));
    assertEquals(Optional.of(42.0), cover.get(0).ready_days());
    assertEquals(Optional.of(70.0), cover.get(0).all_days());
    assertEquals(Optional.empty(), cover.get(1).ready_days(), "nothing says how long it lasts");
    assertEquals(
        LocalDate.of(2026, 10, 1), Cover.since(TODAY)); // 31 days of October, 25 of November
  }

  private static Standing waiting(String tag, String since, String due) {
    return new Standing(
        tag,
        1,
        new Life(Stage.PENDING, Optional.empty(), false),
        since,
        "",
        "Which build is it?",
        "H. Oduya",
        due);
  }

  private static Deposit deposit(String number, long hundredths) {
    Money amount = new Money(hundredths, "EUR");
    return new Deposit(
        number, "Orrel", amount, "2026-11-01", "2026-12-01", "", "", new Money(0, "EUR"), "");
  }

  /** Ten units, 1 to 10 days: the median's ranks are 2 and 9 (scipy 1.17, quantile_test). */
  @Test
  void theTurnaroundHasAnIntervalAndNamesWhoWasSlower() {
    for (int day = 1; day <= 10; day++) {
      String left = LocalDate.of(2025, 12, 30).plusDays(day).toString();
      visits.add(visit("U-" + day, 1, "A1", "repair", "Orrel", "SHIPPED", true, left));
    }
    long first =
        visits.get(0).shipped().orElseThrow().toEpochDay() - visits.get(0).received().toEpochDay();
    ShopFigures.Turnaround t = figures().turnaround_days();
    assertEquals(Optional.of(first + 4), t.median());
    assertEquals(Optional.of(new Interval(first + 1, first + 8, 0.95)), t.medianInterval());
    assertEquals(Optional.of(first + 8), t.p90());
    assertEquals(Optional.empty(), t.p90Interval());
    assertEquals(5, t.within().get(0).hits().size());
    assertEquals(List.of("U-10"), t.within().get(1).others());
  }

  @Test
  void anEmptyShopHasNoNumbersAndNoFault() {
    ShopFigures none = figures();
    assertEquals(List.of(), none.yield());
    assertEquals(Optional.empty(), none.predicted().interval());
    assertEquals(Optional.empty(), none.turnaround_days().median());
    assertEquals(0, none.weibull().failures());
    assertEquals(List.of(), none.survival());
  }

  private ShopFigures figures() {
    return of(ALWAYS);
  }

  private ShopFigures of(Period period) {
    return ShopFigures.of(visits, visits, claims, List.of(), period, TODAY, ZoneOffset.UTC);
  }

  private void rebuilt(String tag, String variant, String stage, boolean sealed, String shipped) {
    visits.add(visit(tag, 1, variant, "repair", "Orrel", stage, sealed, shipped));
  }

  private void stock(String supplier, String series, boolean sealed, int number) {
    visits.add(visit(series + number, number, "A1", "stock", supplier, "IN_STOCK", sealed, ""));
  }

  private static VisitFact visit(
      String tag,
      int visit,
      String variant,
      String mode,
      String customer,
      String stage,
      boolean sealed,
      String shipped) {
    return new VisitFact(
        tag,
        visit,
        "sd48",
        variant,
        mode,
        customer,
        LocalDate.of(2025, 12, 30),
        "REBUILD",
        "FAIL",
        "PASS",
        "bench-1",
        "M. Reyes",
        sealed,
        stage,
        shipped.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(shipped)),
        "",
        "",
        Optional.empty());
  }

  /**
   * A visit that was decided about: what it did as it came, and when it should have left and did.
   */
  private void decided(
      String tag,
      String to,
      String arrival,
      String cold,
      String hot,
      String promised,
      String left) {
    visits.add(
        new VisitFact(
            tag,
            1,
            "sd48",
            "A1",
            "repair",
            "Orrel",
            LocalDate.of(2026, 10, 1),
            to,
            arrival,
            "",
            "",
            "",
            false,
            left.isEmpty() ? "TO_RETURN" : "SHIPPED",
            left.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(left)),
            cold,
            hot,
            promised.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(promised))));
  }

  @Test
  void noFaultFoundIsToldByTheAirInWhichItWasLookedFor() {
    decided("U-1", "RETURN", "PASS", "PASS", "PASS", "", "");
    decided("U-2", "REBUILD", "FAIL", "ALONE", "PASS", "", "");
    decided("U-3", "RETURN", "PASS", "", "", "", "");
    decided("U-4", "REBUILD", "FAIL", "FAIL", "", "", "");
    decided("U-5", "REBUILD", "FAIL", "", "ALONE", "", "");
    assertEquals(
        List.of(
            new Rate("at room temperature alone", List.of("U-3"), List.of()),
            new Rate("tested cold", List.of(), List.of("U-4")),
            new Rate("tested cold and hot", List.of("U-1"), List.of("U-2")),
            new Rate("tested hot", List.of(), List.of("U-5"))),
        figures().noFaultByTest());
    assertEquals(
        List.of(
            new Rate("in the cold alone", List.of("U-2"), List.of("U-1", "U-4")),
            new Rate("in the heat alone", List.of("U-5"), List.of("U-1", "U-2"))),
        figures().failedNowhereElse());
  }

  /** Today is the 25th: what is here and due today is neither kept nor broken yet. */
  @Test
  void aPromiseIsKeptOnItsDayAndBrokenAfterIt() {
    decided("U-1", "RETURN", "FAIL", "", "", "2026-11-10", "2026-11-10");
    decided("U-2", "RETURN", "FAIL", "", "", "2026-11-10", "2026-11-11");
    decided("U-3", "RETURN", "FAIL", "", "", "2026-11-24", "");
    decided("U-4", "RETURN", "FAIL", "", "", "2026-11-25", "");
    decided("U-5", "RETURN", "FAIL", "", "", "", "2026-11-10");
    assertEquals(
        List.of(new Rate("", List.of("U-1"), List.of("U-2", "U-3"))), figures().promisesKept());
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

  private void claim(String tag, String opened, String claimClass) {
    claims.add(new Claim(tag, 1, 1, opened + "T12:00:00Z", "x", "2027-01-01", claimClass, "", ""));
  }
}
