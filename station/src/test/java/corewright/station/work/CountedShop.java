package corewright.station.work;

import corewright.bench.life.Life;
import corewright.bench.life.Stage;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.Deposits.Deposit;
import corewright.reports.ledger.Money;
import corewright.reports.ledger.Standing;
import corewright.reports.ledger.VisitFact;
import corewright.station.work.ShopFigures.Period;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Visits and claims that are few enough to be counted by hand. */
abstract class CountedShop {
  static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  static final Period ALWAYS = new Period(Optional.empty(), Optional.empty(), false);

  final List<VisitFact> visits = new ArrayList<>();

  final List<Claim> claims = new ArrayList<>();

  static Standing waiting(String tag, String since, String due) {
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

  static Deposit deposit(String number, long hundredths) {
    Money amount = new Money(hundredths, "EUR");
    return new Deposit(
        number, "Orrel", amount, "2026-11-01", "2026-12-01", "", "", new Money(0, "EUR"), "");
  }

  ShopFigures figures() {
    return of(ALWAYS);
  }

  ShopFigures of(Period period) {
    return ShopFigures.of(visits, visits, claims, List.of(), period, TODAY, ZoneOffset.UTC);
  }

  void rebuilt(String tag, String variant, String stage, boolean sealed, String shipped) {
    visits.add(visit(tag, 1, variant, "repair", "Orrel", stage, sealed, shipped));
  }

  void stock(String supplier, String series, boolean sealed, int number) {
    visits.add(visit(series + number, number, "A1", "stock", supplier, "IN_STOCK", sealed, ""));
  }

  static VisitFact visit(
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
  void decided(
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

  void claim(String tag, String opened, String claimClass) {
    claims.add(new Claim(tag, 1, 1, opened + "T12:00:00Z", "x", "2027-01-01", claimClass, "", ""));
  }
}
