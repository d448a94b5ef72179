package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What was given out is told again as it was, whatever came later. */
@ParameterizedClass
@EnumSource(Kept.class)
class PapersTest {
  @Parameter private Kept kept;
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  @TempDir Path folder;

  @Test
  void theFirstOfAVisitIsToldWithWhatTheRecordSaidThen() {
    try (Ledger ledger = kept.open(folder, "bench-1", CLOCK)) {
      String tag = ledger.nextTag();
      ledger.receive(Samples.core(tag, "114"));
      RunRecord run = Samples.run("bench-1-000001-x", tag);
      ledger.runEnded(run);
      Dossier then = ledger.dossier(tag);
      Head head = ledger.papers().head(tag).orElseThrow();
      add(ledger, tag, "certificate", Map.of("name", "Mill Yard"));
      ledger.decided(tag, Samples.rebuild(), "H. Oduya");
      add(ledger, tag, "certificate", Map.of("name", "Another"));
      ledger.receive(Samples.core(tag, "114"));

      Papers.Given first =
          ledger.papers().first(tag, 1, "certificate", Samples.MORNING).orElseThrow();
      assertEquals(then, first.dossier());
      assertNotEquals(then, ledger.dossier(tag, 1));
      assertEquals(head, first.head());
      assertEquals(Map.of("name", "Mill Yard"), first.made());
      Papers papers = ledger.papers();
      assertEquals(Optional.empty(), papers.first(tag, 1, "letter", Samples.MORNING));
      assertEquals(Optional.empty(), papers.first(tag, 2, "certificate", Samples.MORNING));
      assertEquals(
          Optional.empty(), papers.first(tag, 1, "certificate", Samples.MORNING.plusSeconds(1)));
    }
  }

  /** Another writer's chain would prove nothing about the run. */
  @Test
  void theHeadOfAUnitIsThatOfTheChainWithItsNewestEvent() {
    String tag;
    Head bench;
    try (Ledger ledger = kept.open(folder, "bench-1", CLOCK)) {
      tag = ledger.nextTag();
      ledger.receive(Samples.core(tag, "114"));
      bench = ledger.head().orElseThrow();
    }
    try (Ledger ledger = kept.open(folder, "paper", CLOCK)) {
      String other = ledger.nextTag();
      ledger.receive(Samples.core(other, "115"));
      assertEquals(bench, ledger.papers().head(tag).orElseThrow());
      assertEquals("paper", ledger.papers().head(other).orElseThrow().chain());
      assertEquals(List.of(), ledger.verify().broken());
    }
  }

  private static void add(Ledger ledger, String tag, String kind, Map<String, String> made) {
    ledger.papers().add(tag, kind, Path.of("x.pdf"), "ef".repeat(32), made, "H. Oduya");
  }
}
