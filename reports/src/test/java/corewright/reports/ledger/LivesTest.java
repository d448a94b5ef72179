package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.life.Act;
import corewright.bench.life.ClaimClass;
import corewright.bench.life.ClaimClass.Outcome;
import corewright.bench.life.Stage;
import corewright.bench.record.Core;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.profiles.Grade;
import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Kept.class)
class LivesTest {
  @Parameter private Kept kept;
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  private static final String WHO = "M. Reyes";

  @TempDir private Path folder;
  private Ledger ledger;
  private String tag = "";

  @BeforeEach
  void aTestedCoreThatShallBeRebuilt() {
    ledger = kept.open(folder, "bench-1", CLOCK);
    tag = ledger.nextTag();
    ledger.receive(Samples.core(tag, "SN 0698-114"));
    ledger.identified(tag, Samples.identification(), WHO);
    ledger.runEnded(Samples.run("a", tag));
    ledger.decided(tag, Samples.rebuild(), WHO);
    ledger.stores().take(new Stores.Lot("lot-7", "2200 uF 63 V", 3, 3, "Parts Ltd", "2608"), WHO);
  }

  @AfterEach
  void close() {
    ledger.close();
  }

  @Test
  void fromTheQueueToTheCustomerAndBackUnderClaim() {
    assertEquals(Stage.TO_REBUILD, stage());
    take(new Step.Plain(Act.OPEN, ""));
    take(work("C1", "C2"));
    take(new Step.Plain(Act.CLOSE, ""));
    ledger.runEnded(Samples.ship("s1", tag, Verdict.PASS, Source.BENCH));
    assertEquals(Stage.PROVEN, stage());
    take(new Step.Sealing("8120", "dot under rib 3"));
    take(new Step.Plain(Act.PACK, ""));
    take(new Step.Shipping("carrier", "T-1", "2026-11-26", "2027-11-26", "Parts and labour"));
    assertEquals(Stage.SHIPPED, stage());

    ClaimDesk.Claim open = ledger.claims().open(tag, "dies when hot", Map.of("hours", "120"), WHO);
    assertEquals("2027-11-26", open.warrantyUntil());
    assertEquals(List.of(open), ledger.claims().waiting());
    assertThrows(LedgerFault.class, () -> ledger.claims().open(tag, "again", Map.of(), WHO));
    assertEquals(2, ledger.receive(Samples.core(tag, "SN 0698-114")));
    assertEquals(Stage.RECEIVED, stage());
    assertFalse(ledger.lives().standing(tag).life().safe());
    ClaimDesk.Closing closing =
        new ClaimDesk.Closing(
            ClaimClass.W1, "C61", Outcome.ACCEPTED, List.of("run c1: 44.0 V under 2.0 A"), "");
    assertEquals("W1", ledger.claims().close(tag, closing, WHO).claimClass());
    assertThrows(LedgerFault.class, () -> ledger.claims().close(tag, closing, WHO));
    assertEquals(List.of(), ledger.claims().waiting());
    assertTrue(ledger.verify().whole());
    assertEquals(
        List.of(
            "Bank replaced",
            "C1: 2200 uF 63 V, lot LOT-7",
            "C2: 2200 uF 63 V, lot LOT-7",
            "Seal 8120 fitted"),
        ledger.dossier(tag, 1).rebuild());
  }

  @Test
  void openingVoidsTheFinalTestAndTheSealAndItsNumberIsUsedUp() {
    proven();
    take(new Step.Sealing("8120", ""));
    take(new Step.Plain(Act.OPEN, "rattles"));
    take(new Step.Plain(Act.CLOSE, ""));
    LedgerFault early = refused(new Step.Sealing("8121", ""));
    assertTrue(
        early.getMessage().contains("newer than the last time it was open"), early.getMessage());
    ledger.runEnded(Samples.ship("s2", tag, Verdict.PASS, Source.BENCH));
    LedgerFault used = refused(new Step.Sealing("8120", ""));
    assertTrue(used.getMessage().startsWith("Seal 8120 was used on " + tag), used.getMessage());
    take(new Step.Sealing("8121", ""));
  }

  @Test
  void whatIsNoPassOfABenchProvesNothing() {
    take(new Step.Plain(Act.OPEN, ""));
    take(new Step.Plain(Act.CLOSE, ""));
    ledger.runEnded(Samples.ship("e", tag, Verdict.PASS, Source.EMULATED));
    assertEquals(Stage.CLOSED, stage());
    ledger.runEnded(Samples.ship("i", tag, Verdict.PASS, Source.IMPORTED));
    assertEquals(Stage.CLOSED, stage());
    ledger.runEnded(Samples.ship("v", tag, Verdict.VOID, Source.BENCH));
    assertEquals(Stage.CLOSED, stage());
    ledger.runEnded(Samples.ship("p", tag, Verdict.PASS, Source.BENCH));
    assertEquals(Stage.PROVEN, stage());
    ledger.runEnded(Samples.ship("f", tag, Verdict.MARGINAL, Source.BENCH));
    assertEquals(Stage.CLOSED, stage());
  }

  @Test
  void partsComeFromTheStoreAndNoMoreThanThereAre() {
    take(new Step.Plain(Act.OPEN, ""));
    take(work("C1", "C2"));
    assertEquals(1, ledger.stores().lots().get(0).remaining());
    assertTrue(refused(work("C3", "C4")).getMessage().contains("has 1 left, 2 are wanted"));
    assertEquals(1, ledger.stores().lots().get(0).remaining());
    Step other = new Step.Work(List.of(), List.of(new Fitted("Q1", "transistor", "LOT-7", "")));
    String mixed = refused(other).getMessage();
    assertTrue(mixed.startsWith("Lot LOT-7 holds 2200 uF 63 V, not transistor"), mixed);
    Step unknown = new Step.Work(List.of(), List.of(new Fitted("C1", "x", "LOT-8", "")));
    assertTrue(refused(unknown).getMessage().contains("There is no lot LOT-8"));
  }

  @Test
  void aHoldHasAQuestionAnOwnerAndADate() {
    LocalDate due = LocalDate.of(2026, 12, 3);
    assertThrows(LedgerFault.class, () -> take(new Step.Hold("", "H. Oduya", due)));
    take(new Step.Hold("Does the customer agree?", "H. Oduya", due));
    Standing held = ledger.lives().at(Stage.PENDING).get(0);
    assertEquals("Does the customer agree?", held.question());
    assertEquals("2026-12-03", held.due());
    ledger.decided(tag, Samples.rebuild(), WHO);
    assertEquals("", ledger.lives().standing(tag).due());
    ledger.decided(tag, Samples.pending(), WHO);
    assertEquals("2026-11-30", ledger.lives().standing(tag).due());
  }

  @Test
  void stepsThatLackWhatTheyMustBringAreRefused() {
    assertTrue(refused(new Step.Safe(5.0, "")).getMessage().contains("still holds 5.0 V"));
    assertTrue(refused(new Step.Safe(Double.NaN, "")).getMessage().contains("still holds"));
    assertTrue(refused(new Step.Back(" ")).getMessage().contains("lacks its reason"));
    take(new Step.Back("scanned the wrong tag"));
    assertEquals(Stage.TESTED, stage());
    assertThrows(LedgerFault.class, () -> take(new Step.Back("and again")));
    take(new Step.Plain(Act.OPEN, ""));
    assertTrue(refused(new Step.Scrapping("burnt", "", "")).getMessage().contains("second person"));
    assertTrue(
        refused(new Step.Scrapping("burnt", " " + WHO.toLowerCase(Locale.ROOT), ""))
            .getMessage()
            .contains("who is another"));
    String hash = "ab".repeat(32);
    String none = refused(new Step.Scrapping("burnt", "", hash)).getMessage();
    assertTrue(none.contains("No photograph of " + tag + " has the hash"), none);
    ledger.lives().attach(tag, new Attached(hash, "x.jpg", "photo", "board"), WHO);
    take(new Step.Scrapping("burnt", "", hash));
    assertEquals(Stage.SCRAPPED, stage());
    assertThrows(
        LedgerFault.class, () -> ledger.lives().take(tag, new Step.Plain(Act.STOCK, ""), " "));
  }

  @Test
  void aUnitIsOnOneBenchAtATime() {
    ledger.runBegun(Samples.begun("b", tag));
    RunBegun first = Samples.begun("c", tag);
    RunBegun other =
        new RunBegun(
            "c", tag, "arrival", 2, first.source(), first.started(), WHO, "bench-2", "", "p", "");
    LedgerFault fault = assertThrows(LedgerFault.class, () -> ledger.runBegun(other));
    assertTrue(fault.getMessage().contains("is on bench bench-1 in run b"), fault.getMessage());
    ObjectNode old = (ObjectNode) Json.tree(first);
    old.remove("second"); // as events were before it was kept who stood by
    assertEquals(first, Json.record(old, RunBegun.class));
  }

  @Test
  void theViewsOfALifeAreMadeFromTheEventsAlone() {
    proven();
    take(new Step.Sealing("8120", "dot"));
    ledger.lives().grade(tag, Grade.B, "screws missing", WHO);
    ledger.lives().attach(tag, new Attached("ab".repeat(32), "x.jpg", "photo", "label"), WHO);
    take(new Step.Plain(Act.PACK, ""));
    take(new Step.Shipping("carrier", "T-1", "2026-11-26", "2027-11-26", "Parts and labour"));
    ledger.claims().open(tag, "dies when hot", Map.of(), WHO);
    Raw raw = new Raw(kept.url(folder));
    List<String> before = raw.views();
    ledger.custody().rebuildViews();
    assertEquals(before, raw.views());
    assertEquals("B", ledger.lives().standing(tag).grade());
    assertEquals("x.jpg", ledger.lives().attached(tag).get(0).name());
    Core again = ledger.dossier(tag).core();
    ledger.receive(again);
    Lives.Whole whole = ledger.lives().whole(tag);
    assertEquals(List.of(ledger.dossier(tag, 1), ledger.dossier(tag)), whole.visits());
    assertEquals(List.of(2, 0), whole.visits().stream().map(v -> v.runs().size()).toList());
    assertEquals(ledger.lives().history(tag), whole.history());
    assertEquals(ledger.lives().standing(tag), whole.standing());
    assertEquals(ledger.lives().attached(tag), whole.files());
  }

  @Test
  void aLedgerFromBeforeTheLifeOfUnitsWasKeptTellsItFromItsEvents() {
    ledger.close();
    Raw raw = new Raw(kept.url(folder));
    raw.execute("DELETE FROM life");
    raw.execute("UPDATE counter SET value = 0 WHERE name = 'views'");
    ledger = kept.open(folder, "bench-1", CLOCK);
    assertEquals(Stage.TO_REBUILD, stage());
  }

  private void proven() {
    take(new Step.Plain(Act.OPEN, ""));
    take(work("C1", "C2"));
    take(new Step.Plain(Act.CLOSE, ""));
    ledger.runEnded(Samples.ship("s1", tag, Verdict.PASS, Source.BENCH));
  }

  private static Step work(String... places) {
    return new Step.Work(
        List.of("Bank replaced"),
        List.of(places).stream()
            .map(place -> new Fitted(place, "2200 uF 63 V", "Lot-7", "1180 uF"))
            .toList());
  }

  private void take(Step step) {
    ledger.lives().take(tag, step, WHO);
  }

  private LedgerFault refused(Step step) {
    return assertThrows(LedgerFault.class, () -> take(step));
  }

  private Stage stage() {
    return ledger.lives().standing(tag).life().stage();
  }
}
