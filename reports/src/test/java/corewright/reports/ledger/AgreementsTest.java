package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Core;
import corewright.profiles.Grade;
import corewright.reports.Samples;
import corewright.reports.ledger.Agreements.Agreement;
import corewright.reports.ledger.Agreements.Quote;
import corewright.reports.ledger.Deposits.Deposit;
import corewright.reports.ledger.Deposits.Ending;
import corewright.reports.ledger.Deposits.Settlement;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Kept.class)
class AgreementsTest {
  @Parameter private Kept kept;
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);
  @TempDir private Path folder;
  private Ledger ledger;

  @BeforeEach
  void open() {
    ledger = kept.open(folder, "counter", Clock.fixed(Samples.MORNING, ZoneOffset.UTC));
  }

  @AfterEach
  void close() {
    ledger.close();
  }

  @Test
  void aQuoteIsAnsweredOnceWhileItStands() {
    Agreement made = ledger.agreements().quote(quote("180"), "counter");
    assertEquals("quoted", made.state());
    assertEquals("Orrel Plant Hire", made.customer());
    assertEquals("180.00 EUR", made.price().toString());
    LedgerFault late =
        assertThrows(
            LedgerFault.class,
            () ->
                ledger
                    .agreements()
                    .answer(made.number(), true, "x", "mail", TODAY.plusDays(31), "c"));
    assertTrue(late.getMessage().contains("was offered until 2026-12-26"), late.getMessage());
    Agreement agreed =
        ledger.agreements().answer(made.number(), true, "Mr Orrel", "mail", TODAY, "c");
    assertEquals("approved", agreed.state());
    assertEquals("Mr Orrel, mail", agreed.answered());
    assertThrows(
        LedgerFault.class,
        () -> ledger.agreements().answer(made.number(), false, "x", "mail", TODAY, "c"));
  }

  @Test
  void whatTheCustomerAgreedToBeforehandIsApproved() {
    assertEquals("approved", ledger.agreements().quote(quote("120.00"), "counter").state());
    assertEquals("quoted", ledger.agreements().quote(quote("120.01"), "counter").state());
  }

  @Test
  void oneNumberIsForOneUnit() {
    Agreement made = ledger.agreements().quote(quote("180"), "counter");
    assertEquals(List.of(made), ledger.agreements().expected());
    ledger.receive(Samples.core(Tags.of(1), "114"));
    ledger.agreements().arrived(made.number(), Tags.of(1), "counter");
    assertEquals(List.of(), ledger.agreements().expected());
    assertThrows(
        LedgerFault.class, () -> ledger.agreements().arrived(made.number(), Tags.of(2), "counter"));
    String mistyped = made.number().replace("0001", "0002");
    assertThrows(LedgerFault.class, () -> ledger.agreements().get(mistyped));
  }

  @Test
  void aDepositIsOwedUntilItIsSettledOnce() {
    Deposit taken = deposit();
    assertEquals("2026-12-26", taken.due());
    assertEquals(List.of(taken), ledger.deposits().outstanding());
    Settlement good = new Settlement(Ending.ACCEPTED, Tags.of(1), Grade.B, 80, "");
    LedgerFault never =
        assertThrows(
            LedgerFault.class, () -> ledger.deposits().settle(taken.number(), good, TODAY, "o"));
    assertTrue(never.getMessage().startsWith("There is no unit " + Tags.of(1)), "" + never);
    ledger.receive(Samples.core(Tags.of(1), "114"));
    Deposit settled = ledger.deposits().settle(taken.number(), good, TODAY.plusDays(10), "owner");
    assertEquals("120.40 EUR", settled.credit().toString());
    assertEquals(List.of(), ledger.deposits().outstanding());
    assertThrows(
        LedgerFault.class,
        () -> ledger.deposits().settle(taken.number(), good, TODAY.plusDays(11), "owner"));
    String second = deposit().number();
    LedgerFault twice =
        assertThrows(LedgerFault.class, () -> ledger.deposits().settle(second, good, TODAY, "o"));
    assertTrue(
        twice.getMessage().contains("has settled deposit " + taken.number() + " already"),
        twice.getMessage());
  }

  /** Eight in the evening in New York is tomorrow in UTC, in which the ledger's times are. */
  @Test
  void aCoreOfTheEveningBringsOneDepositBackTooAndOneThatCameAgainAnother() {
    Instant evening = Instant.parse("2026-11-27T01:00:00Z");
    Core late = new Core(Tags.of(1), "sd48", "114", "", "Orrel", "exchange", "", evening, "c");
    ledger.receive(late);
    Settlement good = new Settlement(Ending.ACCEPTED, Tags.of(1), Grade.B, 80, "");
    ledger.deposits().settle(deposit().number(), good, TODAY, "o");
    String second = deposit().number();
    assertThrows(LedgerFault.class, () -> ledger.deposits().settle(second, good, TODAY, "o"));
    ledger.receive(late);
    assertEquals(
        "120.40 EUR", ledger.deposits().settle(second, good, TODAY, "o").credit().toString());
  }

  @Test
  void aCreditThatIsNotTheUsualOneHasAReason() {
    Deposit taken = deposit();
    Settlement little = new Settlement(Ending.ACCEPTED, Tags.of(1), Grade.B, 30, "");
    LedgerFault fault =
        assertThrows(
            LedgerFault.class, () -> ledger.deposits().settle(taken.number(), little, TODAY, "o"));
    assertTrue(
        fault
            .getMessage()
            .startsWith("30 % is not what grade B brings 0 days after the window (80 to 100 %)"),
        fault.getMessage());
    Settlement early = new Settlement(Ending.EXPIRED, "", Grade.X, 0, "");
    assertThrows(
        LedgerFault.class, () -> ledger.deposits().settle(taken.number(), early, TODAY, "o"));
    Deposit expired = ledger.deposits().settle(taken.number(), early, TODAY.plusDays(31), "o");
    assertEquals("0.00 EUR", expired.credit().toString());
  }

  @Test
  void theViewsOfAgreementsAreMadeFromTheEventsAlone() {
    Agreement made = ledger.agreements().quote(quote("180"), "counter");
    ledger.agreements().answer(made.number(), false, "x", "mail", TODAY, "c");
    deposit();
    Raw raw = new Raw(kept.url(folder));
    List<String> before = raw.views();
    assertEquals(2, before.size());
    ledger.custody().rebuildViews();
    assertEquals(before, raw.views());
  }

  @Test
  void anAmountIsReadOneWayOnly() {
    assertEquals(12050, Money.of("120.5", "EUR").hundredths());
    assertEquals(12005, Money.of(" 120.05 ", "EUR").hundredths());
    for (String none : new String[] {"120,50", "-1", "1.234", "", "1e3", "1 000"}) {
      assertThrows(LedgerFault.class, () -> Money.of(none, "EUR"), none);
    }
    assertThrows(LedgerFault.class, () -> Money.of("1", "eur"));
  }

  private Deposit deposit() {
    return ledger
        .deposits()
        .take("Orrel Plant Hire", Money.of("150.50", "EUR"), 30, "U-00004V sold", TODAY, "counter");
  }

  private static Quote quote(String price) {
    return new Quote(
        "Orrel Plant Hire",
        "repair",
        "sd48",
        Money.of(price, "EUR"),
        Money.of("45", "EUR"),
        Money.of("120", "EUR"),
        TODAY.plusDays(30),
        "no start when cold");
  }
}
