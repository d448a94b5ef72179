package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Act;
import corewright.bench.life.Stage;
import corewright.bench.record.Finding.Outcome;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.reports.Samples;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Kept.class)
class FinderTest {
  @Parameter private Kept kept;
  private static final Query ALL = query();
  @TempDir private Path folder;
  private Ledger ledger;

  /** Unit 1 and 2 share a lot, 3 has the other; 1 to 3 left, 4 was only received. */
  @BeforeEach
  void threeThatLeftAndOneThatCame() {
    ledger = kept.open(folder, "bench-1", Clock.fixed(Samples.MORNING, ZoneOffset.UTC));
    ledger.stores().take(new Stores.Lot("LOT-7", "cap", 9, 9, "Parts Ltd", ""), "x");
    ledger.stores().take(new Stores.Lot("LOT-8", "cap", 9, 9, "Parts Ltd", ""), "x");
    leave(1, "LOT-7", "M. Reyes");
    leave(2, "LOT-7", "A. Tester");
    leave(3, "LOT-8", "A. Tester");
    ledger.receive(Samples.core(Tags.of(4), "=1+1"));
  }

  @AfterEach
  void close() {
    ledger.close();
  }

  @Test
  void eachPropertyNarrowsAndAllOfThemMustHold() {
    assertEquals(tags(1, 2, 3, 4), find(ALL));
    assertEquals(tags(1, 2), find(with("lot", "lot-7")));
    assertEquals(tags(2, 3), find(with("person", "A. Tester")));
    assertEquals(tags(1, 2, 3), find(with("bench", "bench-1")));
    assertEquals(tags(), find(with("bench", "bench-2")));
    assertEquals(tags(1, 2, 3), find(with("fixture", "fixture-sd48-1")));
    assertEquals(tags(4), find(with("stage", "RECEIVED")));
    assertEquals(tags(1, 2, 3), find(with("verdict", "PASS")));
    assertEquals(tags(3), find(with("text", "0698-3")));
    assertEquals(tags(2), find(query("text", "0698", "lot", "LOT-7", "person", "A. Tester")));
    assertEquals(tags(1, 2, 3, 4), find(query("from", "2026-11-26", "until", "2026-11-26")));
    assertEquals(tags(), find(with("from", "2026-11-27")));
    assertEquals(tags(), find(with("until", "2026-11-25")));
  }

  @Test
  void siblingsShareALotATechnicianOrBenchAndWeek() {
    Map<String, List<Found>> shared = ledger.siblings(Tags.of(1));
    assertEquals(
        Set.of(
            "lot LOT-7",
            "technician M. Reyes, 2026-10-15 to 2027-01-07",
            "bench bench-1, week 2026-11-23 to 2026-11-29"),
        shared.keySet());
    assertEquals(tags(2), of(shared, "lot LOT-7"));
    assertEquals(tags(), of(shared, "technician M. Reyes, 2026-10-15 to 2027-01-07"));
    assertEquals(tags(2, 3), of(shared, "bench bench-1, week 2026-11-23 to 2026-11-29"));
    assertEquals(
        tags(3), of(ledger.siblings(Tags.of(2)), "technician A. Tester, 2026-10-15 to 2027-01-07"));
    assertEquals(
        List.of(
            new Sharing("lot LOT-7", 1, tags(2)),
            new Sharing("technician M. Reyes, 2026-10-15 to 2027-01-07", 0, tags()),
            new Sharing("bench bench-1, week 2026-11-23 to 2026-11-29", 2, tags(2))),
        ledger.sharing(Tags.of(1), 1));
  }

  @Test
  void theFactsOfEachVisitAreAsTheyHappened() {
    ledger.facts().confirm(Tags.of(2), "output capacitors", "power stage", "x");
    List<VisitFact> facts = ledger.facts().visits();
    LocalDate day = LocalDate.of(2026, 11, 26);
    assertEquals(facts, ledger.facts().received(day, day));
    assertEquals(List.of(), ledger.facts().received(day.plusDays(1), day.plusDays(9)));
    assertEquals(3, ledger.facts().shipped(day.minusDays(9), day).size());
    assertEquals(0, ledger.facts().shipped(day.minusDays(9), day.minusDays(1)).size());
    assertEquals(
        new VisitFact(
            Tags.of(2),
            1,
            "sd48",
            "",
            "repair",
            "Orrel Plant Hire",
            day,
            "REBUILD",
            "FAIL",
            "PASS",
            "bench-1",
            "A. Tester",
            true,
            "SHIPPED",
            Optional.of(day),
            "",
            "",
            Optional.empty()),
        facts.get(1));
    assertEquals("RECEIVED", facts.get(3).stage());
    assertEquals("", facts.get(3).disposition());
    assertEquals(
        List.of(new Facts.Confirmed(Tags.of(2), 1, "output capacitors", "power stage")),
        ledger.facts().confirmed());
    assertEquals(facts.subList(0, 3), ledger.facts().at(Stage.SHIPPED));
    assertEquals(List.of(), ledger.facts().later());
    ledger.receive(Samples.core(Tags.of(2), "SN 0698-2"));
    assertEquals(2, ledger.facts().at(Stage.SHIPPED).size(), "an earlier visit is over");
    assertEquals(tags(2), ledger.facts().later().stream().map(VisitFact::tag).toList());
    VisitFact earlier =
        ledger.facts().visits().stream()
            .filter(v -> v.tag().equals(Tags.of(2)) && v.visit() == 1)
            .findFirst()
            .orElseThrow();
    assertEquals("SHIPPED", earlier.stage());
    assertTrue(earlier.sealed());
  }

  /** Told of what a core did before the rebuild: another fault beside it, alone, or not at all. */
  @Test
  void aVisitTellsWhatTheColdAloneBroughtToLightAndWhatWasPromised() {
    String tag = Tags.of(4);
    ledger.runEnded(Samples.cold("c1", tag, Outcome.FAIL, Outcome.FAIL));
    assertEquals("FAIL", fact(tag).cold());
    ledger.runEnded(Samples.cold("c2", tag, Outcome.FAIL, Outcome.PASS));
    assertEquals("ALONE", fact(tag).cold());
    assertEquals("", fact(tag).hot());
    ledger.runEnded(Samples.cold("c3", tag, Outcome.NOT_MEASURED, Outcome.PASS));
    assertEquals("ALONE", fact(tag).cold(), "what was not measured says nothing");
    LocalDate day = LocalDate.of(2026, 12, 4);
    ledger.lives().promise(tag, day.minusDays(2), "x");
    ledger.lives().promise(tag, day, "x");
    assertEquals(Optional.of(day), fact(tag).promised());
    LedgerFault gone =
        assertThrows(LedgerFault.class, () -> ledger.lives().promise(Tags.of(1), day, "x"));
    assertTrue(gone.getMessage().contains("is shipped"), gone.getMessage());
    List<String> before = new Raw(kept.url(folder)).views();
    ledger.custody().rebuildViews();
    assertEquals(before, new Raw(kept.url(folder)).views());
  }

  private VisitFact fact(String tag) {
    return ledger.facts().visits().stream()
        .filter(v -> v.tag().equals(tag))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aMistypedTagIsFoundByItsCheckCharacterAndMarkedAsAGuess() {
    String tag = Tags.of(3); // U-00003X
    String slip = tag.substring(0, 6) + "7" + tag.substring(7);
    List<Found> found = ledger.find(slip);
    assertEquals(List.of(tag), found.stream().map(Found::tag).toList());
    assertTrue(found.get(0).isGuess());
    String swapped = tag.substring(0, 6) + tag.charAt(7) + tag.charAt(6);
    assertEquals(List.of(tag), ledger.find(swapped).stream().map(Found::tag).toList());
    assertEquals(Set.of(), Mistyped.candidates(tag));
  }

  @Test
  void anExportHoldsEveryTableAndEventAndNoFormula() throws Exception {
    Path out = Files.createDirectory(folder.resolve("out"));
    ledger.custody().export(out, Optional.empty(), false, "H. Oduya");
    assertEquals(ledger.verify().events(), Files.readAllLines(out.resolve("events.jsonl")).size());
    List<String> units = Files.readAllLines(out.resolve("unit.csv"));
    assertEquals("tag,serial,serial_key,family,label,variant,visits", units.get(0));
    assertEquals(5, units.size());
    assertTrue(units.get(4).contains(",'=1+1,"), units.get(4));
    assertEquals(4, Files.readAllLines(out.resolve("fitted.csv")).size());
  }

  /** A capture gets its last name when it is sealed; what was only begun has none that lasts. */
  @Test
  void whatBelongsToACustomerIsNamedAsItLies() {
    RunBegun b = Samples.begun("n", Tags.of(4));
    ledger.runBegun(
        new RunBegun(
            b.id(),
            b.tag(),
            b.purpose(),
            b.number(),
            b.source(),
            b.started(),
            b.operator(),
            b.bench(),
            b.fixture(),
            b.profileId(),
            "captures/n"));
    List<String> before = ledger.custody().evidence(Optional.of("Orrel Plant Hire"));
    assertFalse(before.toString().contains("captures/n"), before.toString());
    ledger.runEnded(Samples.run("n", Tags.of(4)));
    assertEquals(List.of("captures/n.h5"), captures("Orrel Plant Hire"));
    ledger.receive(Samples.coreOf("Dray Marine", Tags.of(1), "0698-1"));
    ledger.runEnded(Samples.run("m", Tags.of(1)));
    assertEquals(List.of("captures/m.h5"), captures("Dray Marine"));
    assertEquals(List.of("captures/n.h5"), captures("Orrel Plant Hire"), "of the visit before");
  }

  private List<String> captures(String customer) {
    return ledger.custody().evidence(Optional.of(customer)).stream()
        .filter(path -> path.matches("captures/[mn].*"))
        .toList();
  }

  @Test
  void aCustomersExportHoldsNothingOfAnybodyElse() throws Exception {
    ledger.receive(Samples.coreOf("Dray Marine", Tags.of(1), "0698-1"));
    ledger.receive(Samples.coreOf("Dray Marine", Tags.of(5), "0698-5"));
    Path out = Files.createDirectory(folder.resolve("out"));
    ledger.custody().export(out, Optional.of("Dray Marine"), false, "H. Oduya");
    List<String> events = Files.readAllLines(out.resolve("events.jsonl"));
    assertEquals(2, events.size(), events.toString());
    assertTrue(events.stream().allMatch(e -> e.contains("\"kind\":\"received\"")));
    assertEquals(3, Files.readAllLines(out.resolve("visit.csv")).size());
    assertEquals(1, Files.readAllLines(out.resolve("run.csv")).size());
    assertEquals(1, Files.readAllLines(out.resolve("seal.csv")).size());
    assertEquals(2, Files.readAllLines(out.resolve("customer.csv")).size());
    assertTrue(Files.notExists(out.resolve("lot.csv")));
  }

  private void leave(int number, String lot, String who) {
    String tag = Tags.of(number);
    ledger.receive(Samples.core(tag, "SN 0698-" + number));
    ledger.runEnded(Samples.run("a" + number, tag));
    ledger.decided(tag, Samples.rebuild(), "H. Oduya");
    Lives lives = ledger.lives();
    lives.take(tag, new Step.Plain(Act.OPEN, ""), who);
    lives.take(tag, new Step.Work(List.of(), List.of(new Fitted("C1", "cap", lot, ""))), who);
    lives.take(tag, new Step.Plain(Act.CLOSE, ""), who);
    ledger.runEnded(Samples.ship("s" + number, tag, Verdict.PASS, Source.BENCH));
    lives.take(tag, new Step.Sealing("81" + number, ""), who);
    lives.take(tag, new Step.Plain(Act.PACK, ""), who);
    lives.take(tag, new Step.Shipping("c", "", "2026-11-26", "2027-11-26", ""), who);
  }

  private List<String> find(Query query) {
    return ledger.find(query).stream().map(Found::tag).toList();
  }

  private static List<String> of(Map<String, List<Found>> shared, String by) {
    return shared.getOrDefault(by, List.of()).stream().map(Found::tag).toList();
  }

  private static List<String> tags(long... numbers) {
    return java.util.Arrays.stream(numbers).mapToObj(Tags::of).toList();
  }

  private static Query with(String name, String value) {
    return query(name, value);
  }

  private static Query query(String... pairs) {
    Map<String, String> by = new java.util.HashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      by.put(pairs[i], pairs[i + 1]);
    }
    return new Query(
        Optional.ofNullable(by.get("text")),
        Optional.ofNullable(by.get("lot")),
        Optional.ofNullable(by.get("person")),
        Optional.ofNullable(by.get("bench")),
        Optional.ofNullable(by.get("fixture")),
        Optional.ofNullable(by.get("from")),
        Optional.ofNullable(by.get("until")),
        Optional.ofNullable(by.get("stage")),
        Optional.ofNullable(by.get("verdict")));
  }
}
