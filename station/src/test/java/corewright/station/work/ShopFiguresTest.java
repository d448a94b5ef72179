package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Stage;
import corewright.measures.statistics.Interval;
import corewright.reports.ledger.Facts.Confirmed;
import corewright.reports.ledger.VisitFact;
import corewright.station.work.ShopFigures.Period;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A shop counted by hand. */
class ShopFiguresTest extends CountedShop {
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
}
