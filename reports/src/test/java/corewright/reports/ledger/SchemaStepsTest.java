package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Act;
import corewright.bench.life.Role;
import corewright.bench.record.Finding.Outcome;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.profiles.Grade;
import corewright.reports.Samples;
import corewright.reports.ledger.Agreements.Quote;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** From every schema that was released, with what could be in it, to the newest. */
class SchemaStepsTest {
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);
  private static final String WHO = "M. Reyes";
  private static final String OWNER = "H. Oduya"; // who receives the samples
  private static final String TAG = Tags.of(1);
  private static final List<String> OLDEST_VIEWS = List.of("unit", "visit", "decision");

  /** From here on the steps themselves fill what is new, and no table is made from the events. */
  private static final int KEEPS_ITS_VIEWS = 11;

  /** Schemas that more could be written down with than with the one before. */
  private static final NavigableSet<Integer> RICHER = new TreeSet<>(Set.of(1, 5, 6, 7, 9, 11, 13));

  @TempDir private static Path shared;
  @TempDir private Path folder;

  static Stream<Arguments> schemas() {
    return Stream.of(Kept.values())
        .flatMap(
            kept ->
                IntStream.rangeClosed(1, Migrations.NEWEST).mapToObj(n -> Arguments.of(kept, n)));
  }

  /** What the newest program tells of it is what it tells of a ledger that it wrote itself. */
  @ParameterizedTest
  @MethodSource("schemas")
  void everythingIsThereAndToldAsItIsToday(Kept kept, int schema) {
    String written = written(schema);
    String old = kept.url(folder, "old");
    kept.makeAt(old, schema);
    Jdbi.create(written)
        .useHandle(
            from ->
                Jdbi.create(old)
                    .useTransaction(
                        to -> {
                          carry(from, to, schema);
                          Urls.store(old).numberOn(to);
                        }));

    Verification before = Ledger.verify(old, Expectations.NONE);
    assertTrue(before.whole(), before.broken().toString());
    try (Ledger ledger = Ledger.open(old, "bench-1", CLOCK, Optional.empty())) {
      assertEquals(before.heads(), ledger.custody().heads());
      assertEquals(new Raw(written).views(), new Raw(old).views());
      String tag = ledger.nextTag();
      assertEquals(Tags.of(schema >= 11 ? 4 : 2), tag);
      ledger.receive(Samples.core(tag, "115"));
      Verification found = ledger.verify();
      assertTrue(found.whole(), found.broken().toString());
      assertEquals(before.events() + 1, found.events());
    }
  }

  /** A ledger of today, on SQLite, with what a program of that schema could have written down. */
  private static String written(int schema) {
    Path file = shared.resolve(RICHER.floor(schema) + ".db");
    if (Files.notExists(file)) {
      Kept.SQLITE.make(Urls.of(file));
      try (Ledger ledger = Ledger.open(file, "bench-1", CLOCK)) {
        happen(ledger, schema);
      }
    }
    return Urls.of(file);
  }

  private static void happen(Ledger ledger, int schema) {
    assertEquals(TAG, ledger.nextTag());
    ledger.receive(Samples.core(TAG, "SN 0698-114"));
    ledger.answers(TAG, Samples.answers());
    ledger.identified(TAG, Samples.identification(), WHO);
    ledger.runBegun(Samples.begun("a", TAG));
    ledger.runEnded(Samples.cold("a", TAG, Outcome.FAIL, Outcome.PASS));
    ledger.runBegun(Samples.begun("b", TAG));
    ledger.decided(TAG, Samples.rebuild(), WHO);
    ledger
        .papers()
        .add(TAG, "test report", Path.of("x.pdf"), "ef".repeat(32), java.util.Map.of(), WHO);
    if (schema >= 5) {
      live(ledger);
    }
    if (schema >= 6) {
      Money money = Money.of("1", "EUR");
      ledger
          .agreements()
          .quote(new Quote("Orrel", "repair", "sd48", money, money, money, TODAY, ""), WHO);
      ledger.deposits().take("Orrel", Money.of("150", "EUR"), 30, "exchange", TODAY, WHO);
    }
    if (schema >= 7) {
      ledger.facts().confirm(TAG, "output capacitors", "power stage", WHO);
    }
    if (schema >= 9) {
      ledger.accounts().put(OWNER, Role.OWNER, "seven red boats".toCharArray(), OWNER);
    }
    if (schema >= 11) {
      ledger.books().bring(List.of(page("7", ""), page("8", "2019-03-11")), OWNER);
    }
    if (schema >= 13) {
      ledger.lives().promise(TAG, TODAY, OWNER);
    }
  }

  private static Books.Entry page(String number, String shipped) {
    return new Books.Entry(
        "number " + number, "x.csv", 2, Samples.core("", "X-" + number), shipped, Map.of());
  }

  private static void live(Ledger ledger) {
    ledger.stores().take(new Stores.Lot("LOT-7", "cap", 9, 9, "Parts Ltd", "2608"), WHO);
    take(ledger, new Step.Plain(Act.OPEN, ""));
    take(
        ledger,
        new Step.Work(List.of("Bank replaced"), List.of(new Fitted("C1", "cap", "LOT-7", ""))));
    take(ledger, new Step.Plain(Act.CLOSE, ""));
    ledger.runEnded(Samples.ship("s", TAG, Verdict.PASS, Source.BENCH));
    take(ledger, new Step.Sealing("8120", "dot under rib 3"));
    ledger.lives().grade(TAG, Grade.B, "screws missing", WHO);
    ledger.lives().attach(TAG, new Attached("ab".repeat(32), "x.jpg", "photo", "label"), WHO);
    take(ledger, new Step.Plain(Act.PACK, ""));
    take(ledger, new Step.Shipping("carrier", "T-1", "2026-11-26", "2027-11-26", "Parts"));
    ledger.claims().open(TAG, "dies when hot", Map.of(), WHO);
    ledger.receive(Samples.core(TAG, "SN 0698-114")); // and so an earlier visit
  }

  private static void take(Ledger ledger, Step step) {
    ledger.lives().take(TAG, step, WHO);
  }

  /** The rows as they would lie in the older tables. */
  private static void carry(Handle from, Handle to, int schema) {
    for (Map<String, Object> counter : rows(from, "counter")) {
      to.execute(
          "UPDATE counter SET value = ? WHERE name = ? AND (name <> 'views' OR ?)",
          counter.get("value"),
          counter.get("name"),
          schema >= KEEPS_ITS_VIEWS);
    }
    List<String> views = new ArrayList<>(Views.TABLES);
    Collections.reverse(views); // parents first
    Stream.concat(Stream.of("content", "chain", "customer", "event", "account"), views.stream())
        .filter(table -> schema >= 9 || !table.equals("account"))
        .filter(table -> schema >= 2 || !views.contains(table))
        .filter(
            table ->
                schema >= KEEPS_ITS_VIEWS || OLDEST_VIEWS.contains(table) || !views.contains(table))
        .forEach(table -> rows(from, table).forEach(row -> insert(to, table, row)));
  }

  private static void insert(Handle to, String table, Map<String, Object> row) {
    List<String> columns = Columns.of(to, table);
    to.execute(
        "INSERT INTO "
            + table
            + " ("
            + String.join(", ", columns)
            + ") VALUES ("
            + String.join(", ", columns.stream().map(c -> "?").toList())
            + ")",
        columns.stream().map(row::get).toArray());
  }

  private static List<Map<String, Object>> rows(Handle handle, String table) {
    return handle.createQuery("SELECT * FROM " + table).mapToMap().list();
  }
}
