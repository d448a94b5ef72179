package corewright.reports.ledger;

import corewright.bench.life.Act;
import corewright.bench.life.ClaimClass;
import corewright.bench.record.Core;
import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.bench.record.Judgement;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.reports.Samples;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.LongConsumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * Ten years of a large shop, quickly: a few units are taken through the ledger as always, and then
 * every row of theirs is repeated with other tags, serials, people, lots and days. What comes out
 * is a ledger like any other, except that it is not signed.
 */
final class Crowd {
  private static final int UNITS_OF_A_LOT = 400;
  private static final int CHUNK = 2000;
  private static final LocalDate FIRST = LocalDate.of(2016, 1, 4);
  private static final int DAYS = 3650;

  /** In the order of {@link #values}. */
  private static final List<String> MARKS =
      List.of(
          Tags.of(1),
          "7654321",
          "2001-01-01",
          "2001-01-05",
          "2001-01-09",
          "2001-05-01",
          "2002-01-09",
          "XLX",
          "M. XTX",
          "bench-XBX",
          "K-00001");

  private static final List<String> PEOPLE =
      List.of("M. Reyes", "A. Tester", "J. Lind", "P. Okoro", "S. Hale", "T. Brandt", "L. Moreau");

  private final String url;
  private final long units;
  private final int customers;
  private final Random random = new Random(7);
  private final Map<String, List<Row>> kinds = new LinkedHashMap<>();
  private final String[] previous = {
    Hashes.NOTHING, Hashes.NOTHING, Hashes.NOTHING, Hashes.NOTHING
  };
  private final long[] sequence = new long[4];

  /** One row of one table; the columns are those of the table, without the event's position. */
  private record Row(String table, List<Object> cells) {}

  Crowd(String url, long units) {
    this.url = url;
    this.units = units;
    this.customers = (int) Math.min(5000, units / 10);
  }

  static String tag(long unit) {
    return Tags.of(unit);
  }

  /** Every serial once, in no order: 7919 has no common factor with 10^7. */
  static String serial(long unit) {
    return "SX-%07d".formatted(unit * 7919 % 10_000_000);
  }

  static String lot(long unit) {
    return "LOT-" + (unit / UNITS_OF_A_LOT);
  }

  /** Whether this unit came back. */
  static boolean isClaimed(long unit) {
    return unit % 50 == 7;
  }

  /**
   * Fills a ledger that has nothing in it yet.
   *
   * @param progress told how many units are in it
   */
  void fill(Path scratch, LongConsumer progress) throws SQLException {
    try (Ledger ledger = Ledger.open(url, "counter", Clock.systemUTC(), Optional.empty())) {
      for (long lot = 0; lot <= units / UNITS_OF_A_LOT; lot++) {
        String name = "LOT-" + lot;
        ledger.stores().take(new Stores.Lot(name, "cap", 9999, 9999, "Parts Ltd", ""), "x");
      }
    }
    try (Handle to = Jdbi.open(url)) {
      Connection connection = to.getConnection();
      boolean file = url.startsWith(Urls.SQLITE);
      if (file) {
        to.execute("PRAGMA synchronous = OFF");
        to.execute("PRAGMA cache_size = -400000");
      }
      for (String kind : List.of("shipped", "claimed", "returned", "waiting")) {
        kinds.put(kind, one(scratch, kind, to));
      }
      connection.setAutoCommit(false);
      frame(to);
      Map<String, PreparedStatement> inserts = new LinkedHashMap<>();
      for (long unit = 1; unit <= units; unit++) {
        add(connection, inserts, unit);
        if (unit % CHUNK == 0 || unit == units) {
          for (PreparedStatement insert : inserts.values()) {
            insert.executeBatch();
          }
          connection.commit();
          progress.accept(unit);
        }
      }
      end(to);
      connection.setAutoCommit(true); // and so committed
    }
  }

  private void frame(Handle to) {
    for (int i = 1; i <= customers; i++) {
      to.execute(
          "INSERT INTO customer (code, name) VALUES (?, ?)", "K-%05d".formatted(i), "Shop " + i);
    }
    to.execute("UPDATE counter SET value = ? WHERE name = 'customer'", customers);
    to.execute("UPDATE counter SET value = ? WHERE name = 'unit'", units);
  }

  private void end(Handle to) {
    for (int i = 0; i < sequence.length; i++) {
      if (sequence[i] > 0) {
        to.execute(
            "INSERT INTO chain (name, sequence, hash) VALUES (?, ?, ?)",
            "bench-" + (i + 1),
            sequence[i],
            previous[i]);
      }
    }
    to.execute(
        "UPDATE lot SET remaining = quantity - (SELECT count(*) FROM fitted f WHERE f.lot ="
            + " lot.lot)");
    to.execute("ANALYZE");
  }

  private void add(Connection to, Map<String, PreparedStatement> inserts, long unit)
      throws SQLException {
    int chain = (int) (unit % sequence.length);
    String[] values = values(unit, chain);
    for (Row row : kinds.get(kind(unit))) {
      PreparedStatement insert = inserts.get(row.table);
      if (insert == null) {
        insert = to.prepareStatement(insert(to, row));
        inserts.put(row.table, insert);
      }
      int at = 1;
      List<String> texts = new ArrayList<>();
      for (Object cell : row.cells) {
        Object value = cell instanceof Stencil s ? s.fill(values) : cell;
        insert.setObject(at++, value);
        texts.add(String.valueOf(value));
      }
      if (row.table.equals("event")) {
        sequence[chain]++;
        String hash =
            Hashes.of(
                values[9],
                sequence[chain],
                texts.get(0),
                texts.get(1),
                texts.get(2),
                texts.get(3),
                texts.get(4),
                previous[chain]);
        insert.setString(at++, values[9]);
        insert.setLong(at++, sequence[chain]);
        insert.setString(at++, previous[chain]);
        insert.setString(at, hash);
        previous[chain] = hash;
      }
      insert.addBatch();
    }
    tails(to, inserts, unit);
  }

  private static void tails(Connection to, Map<String, PreparedStatement> inserts, long unit)
      throws SQLException {
    PreparedStatement insert = inserts.get("serial_tail");
    if (insert == null) {
      insert = to.prepareStatement("INSERT INTO serial_tail (tail, tag) VALUES (?, ?)");
      inserts.put("serial_tail", insert);
    }
    for (String tail : Serials.tails(Serials.key(serial(unit)))) {
      insert.setString(1, tail);
      insert.setString(2, tag(unit));
      insert.addBatch();
    }
  }

  private static String insert(Connection to, Row row) throws SQLException {
    List<String> columns = columns(Jdbi.open(to), row.table);
    return "INSERT INTO "
        + row.table
        + " ("
        + String.join(", ", columns)
        + ") VALUES ("
        + String.join(", ", Collections.nCopies(columns.size(), "?"))
        + ")";
  }

  private static List<String> columns(Handle handle, String table) {
    return table.equals("event")
        ? List.of("at", "who", "kind", "tag", "body", "chain", "sequence", "previous", "hash")
        : Columns.of(handle, table);
  }

  private static String kind(long unit) {
    if (isClaimed(unit)) {
      return "claimed";
    }
    return unit % 10 == 3 ? "returned" : unit % 100 == 11 ? "waiting" : "shipped";
  }

  private String[] values(long unit, int chain) {
    LocalDate received = FIRST.plusDays(unit * DAYS / units);
    LocalDate worked = received.plusDays(1 + random.nextInt(20));
    LocalDate shipped = worked.plusDays(random.nextInt(5));
    return new String[] {
      tag(unit),
      serial(unit).substring(3),
      received.toString(),
      worked.toString(),
      shipped.toString(),
      shipped.plusDays(1L + random.nextInt(360)).toString(),
      shipped.plusYears(1).toString(),
      lot(unit).substring(4),
      PEOPLE.get(random.nextInt(PEOPLE.size())),
      "bench-" + (chain + 1),
      "K-%05d".formatted(1 + random.nextInt(customers))
    };
  }

  /** The rows of one unit that was taken through a ledger of its own. */
  private static List<Row> one(Path scratch, String kind, Handle to) {
    Path file = scratch.resolve(kind + ".db");
    Day day = new Day();
    Kept.SQLITE.make(Urls.of(file));
    try (Ledger ledger = Ledger.open(file, "bench-XBX", day)) {
      live(ledger, day, kind);
    }
    List<Row> rows = new ArrayList<>();
    Jdbi.create(Urls.of(file))
        .useHandle(
            from -> {
              from.createQuery("SELECT sha256, body FROM content")
                  .mapToMap()
                  .forEach(
                      row ->
                          to.execute(
                              "INSERT INTO content (sha256, body) VALUES (?, ?) ON CONFLICT DO"
                                  + " NOTHING",
                              row.get("sha256"),
                              row.get("body")));
              List<String> tables = new ArrayList<>(Views.TABLES);
              Collections.reverse(tables);
              tables.removeAll(List.of("lot", "serial_tail"));
              tables.add("event");
              for (String table : tables) {
                List<String> columns =
                    table.equals("event")
                        ? List.of("at", "who", "kind", "tag", "body")
                        : Columns.of(from, table);
                from.createQuery("SELECT * FROM " + table + " ORDER BY 1, 2")
                    .mapToMap()
                    .forEach(
                        row -> {
                          if (!"lot received".equals(row.get("kind"))) {
                            rows.add(new Row(table, cells(row, columns)));
                          }
                        });
              }
            });
    return rows;
  }

  private static List<Object> cells(Map<String, Object> row, List<String> columns) {
    List<Object> cells = new ArrayList<>();
    for (String column : columns) {
      Object cell = row.get(column);
      cells.add(cell instanceof String text ? new Stencil(text, MARKS) : cell);
    }
    return cells;
  }

  private static void live(Ledger ledger, Day day, String kind) {
    String tag = ledger.nextTag();
    String who = "M. XTX";
    day.set("2001-01-01");
    ledger.receive(
        new Core(
            tag, "sd48", "SX-7654321", "SD 12/48", "Shop 1", "repair", "dies hot", day.now, who));
    if (kind.equals("waiting")) {
      return;
    }
    ledger.identified(tag, Samples.identification(), who);
    ledger.runEnded(
        run(tag, "arrival", kind.equals("returned") ? Verdict.PASS : Verdict.FAIL, day, who));
    ledger.decided(tag, kind.equals("returned") ? back() : Samples.rebuild(), who);
    day.set("2001-01-05");
    if (!kind.equals("returned")) {
      ledger.stores().take(new Stores.Lot("LOT-XLX", "cap", 9, 9, "Parts Ltd", ""), who);
      take(ledger, tag, new Step.Plain(Act.OPEN, ""), who);
      take(
          ledger,
          tag,
          new Step.Work(List.of("Bank"), List.of(new Fitted("C1", "cap", "LOT-XLX", "1180 uF"))),
          who);
      take(ledger, tag, new Step.Plain(Act.CLOSE, ""), who);
      day.set("2001-01-09");
      ledger.runEnded(run(tag, "ship", Verdict.PASS, day, who));
      take(ledger, tag, new Step.Sealing("S-7654321", "dot"), who);
    }
    day.set("2001-01-09");
    take(ledger, tag, new Step.Plain(Act.PACK, ""), who);
    boolean rebuilt = !kind.equals("returned");
    take(
        ledger,
        tag,
        new Step.Shipping(
            "carrier",
            "T-7654321",
            rebuilt ? "2001-01-09" : "",
            rebuilt ? "2002-01-09" : "",
            rebuilt ? "Parts and labour" : ""),
        who);
    if (kind.equals("claimed")) {
      day.set("2001-05-01");
      ledger.claims().open(tag, "dies when hot", Map.of(), who);
      ledger
          .claims()
          .close(
              tag,
              new ClaimDesk.Closing(
                  ClaimClass.W2, "W2", ClaimClass.W2.usual(), List.of("photograph 1"), ""),
              who);
    }
  }

  private static void take(Ledger ledger, String tag, Step step, String who) {
    ledger.lives().take(tag, step, who);
  }

  private static Decision back() {

    return new Decision(
        "D10",
        2,
        Disposition.RETURN,
        "customer",
        "Nothing was found.",
        List.of(),
        "",
        Optional.empty(),
        "",
        "",
        Optional.empty(),
        Map.of());
  }

  private static RunRecord run(String tag, String purpose, Verdict verdict, Day day, String who) {
    RunRecord r = Samples.run(purpose + "-7654321", tag);
    return new RunRecord(
        r.id(),
        tag,
        purpose,
        1,
        Source.BENCH,
        day.now,
        day.now,
        who,
        "bench-XBX",
        "fixture-sd48-1",
        "sd48-" + purpose,
        r.profileRevision(),
        r.profile(),
        r.family(),
        r.benchDescription(),
        r.equipment(),
        r.software(),
        r.capture(),
        r.captureSha256(),
        r.end(),
        List.of(),
        Optional.empty(),
        new Judgement(
            Optional.of(verdict),
            r.judgement().qualifier(),
            "guard band",
            r.judgement().findings(),
            List.of()));
  }

  /** A clock that stands at a day. */
  private static final class Day extends Clock {
    private Instant now = Instant.EPOCH;

    void set(String date) {
      now = Instant.parse(date + "T08:00:00Z");
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }
}
