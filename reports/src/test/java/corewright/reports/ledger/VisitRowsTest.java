package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever people and families are called, a visit is read as it was written. */
@ParameterizedClass
@EnumSource(Kept.class)
class VisitRowsTest {
  private static final List<String> PIECES =
      List.of(
          "\u001f", "\u001f\u001f", "\u001e", "a", "b", "", " ", "'", "\"", "\\", "%", "\n", "Ω");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 26);

  @Parameter private Kept kept;
  @TempDir private Path folder;
  private final Random random = new Random(20);
  private final List<VisitFact> written = new ArrayList<>();

  @Test
  void everyNameIsReadBackAsItIs() {
    kept.make(kept.url(folder));
    add("a\u001f", "", "plain"); // these two make one and the same text
    add("a", "\u001f", "plain");
    for (int i = 0; i < 200; i++) {
      add(name(), name(), name());
    }
    Jdbi.create(kept.url(folder))
        .useTransaction(
            handle -> {
              handle.execute(
                  "INSERT INTO customer (code, name) VALUES (?, ?)", "K-1", "Orrel\u001f& Sons");
              PreparedBatch units =
                  handle.prepareBatch(
                      "INSERT INTO unit (tag, serial, serial_key, family, label, variant, visits)"
                          + " VALUES (?, '', '', '', '', '', 1)");
              PreparedBatch visits =
                  handle.prepareBatch(
                      "INSERT INTO visit (tag, number, received_by, customer, received, family,"
                          + " variant, mode, ship_bench, technician, sealed, stage, cold, hot,"
                          + " promised) VALUES (?, ?, 'x', 'K-1', '2026-11-26T08:00:00Z', ?, ?, ?,"
                          + " ?, ?, 1, 'OPEN', ?, ?, '2026-11-26')");
              for (VisitFact v : written) {
                units.add(v.tag());
                visits.add(
                    v.tag(),
                    v.visit(),
                    v.family(),
                    v.variant(),
                    v.mode(),
                    v.shipBench(),
                    v.technician(),
                    v.cold(),
                    v.hot());
              }
              units.execute();
              visits.execute();
            });
    try (Ledger ledger = kept.open(folder, "x", Clock.systemUTC())) {
      assertEquals(written, ledger.facts().visits());
    }
    assertTrue(written.stream().anyMatch(v -> v.technician().contains("\u001f")));
  }

  /** New York is 5 h behind: 01:30 UTC is the evening before. Old books write no time of day. */
  @Test
  void aVisitIsOfTheDaysThatItWasInTheShop() {
    kept.make(kept.url(folder));
    Jdbi.create(kept.url(folder))
        .useHandle(
            handle -> {
              visit(handle, "U-00001", "2026-11-30T01:30:00.000000Z");
              visit(handle, "U-00002", "2026-11-30T05:00:00Z");
              visit(handle, "U-00003", "2026-11-29T00:00:00Z");
            });
    Clock there = Clock.system(ZoneId.of("America/New_York"));
    try (Ledger ledger = kept.open(folder, "x", there)) {
      LocalDate day = LocalDate.of(2026, 11, 29);
      assertEquals(List.of("U-00001", "U-00003"), tags(ledger.facts().received(day, day)));
      assertEquals(List.of("U-00001", "U-00003"), tags(ledger.facts().shipped(day, day)));
      assertEquals(
          List.of("U-00002"),
          tags(ledger.facts().shipped(day.plusDays(1), LocalDate.of(9999, 12, 31))));
      assertEquals(Optional.of(day), ledger.facts().visits().get(0).shipped());
    }
  }

  private static List<String> tags(List<VisitFact> visits) {
    return visits.stream().map(VisitFact::tag).sorted().toList();
  }

  private static void visit(Handle handle, String tag, String at) {
    handle.execute(
        "INSERT INTO unit (tag, serial, serial_key, family, label, variant, visits)"
            + " VALUES (?, '', '', '', '', '', 1)",
        tag);
    handle.execute(
        "INSERT INTO visit (tag, number, received_by, customer, mode, received, shipped)"
            + " VALUES (?, 1, 'x', '', '', ?, ?)",
        tag,
        at,
        at);
  }

  private void add(String family, String variant, String other) {
    written.add(
        new VisitFact(
            "U-%05d".formatted(written.size()),
            1,
            family,
            variant,
            other,
            "Orrel\u001f& Sons",
            DAY,
            "",
            "",
            "",
            other,
            other,
            true,
            "OPEN",
            Optional.empty(),
            other,
            other,
            Optional.of(DAY)));
  }

  private String name() {
    StringBuilder name = new StringBuilder();
    for (int i = random.nextInt(4); i > 0; i--) {
      name.append(PIECES.get(random.nextInt(PIECES.size())));
    }
    return name.toString();
  }
}
