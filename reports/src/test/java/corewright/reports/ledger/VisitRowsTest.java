package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
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
