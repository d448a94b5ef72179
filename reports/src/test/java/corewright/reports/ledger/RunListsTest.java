package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Stage;
import corewright.bench.record.Identification;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Units 1 to 3 are of one build, 4 of another; each was run once, 2 without a verdict. */
@ParameterizedClass
@EnumSource(Kept.class)
class RunListsTest {
  @Parameter private Kept kept;
  @TempDir private Path folder;
  private Ledger ledger;

  @BeforeEach
  void fourThatWereRun() {
    ledger = kept.open(folder, "bench-1", Clock.fixed(Samples.MORNING, ZoneOffset.UTC));
    for (int number = 1; number <= 4; number++) {
      String tag = Tags.of(number);
      ledger.receive(Samples.core(tag, "S-" + number));
      ledger.identified(tag, build(number == 4 ? "A1" : "A2"), "x");
      ledger.runEnded(
          number == 2
              ? Samples.ship("s2", tag, Verdict.VOID, Source.BENCH)
              : Samples.run("s" + number, tag));
    }
  }

  @AfterEach
  void close() {
    ledger.close();
  }

  @Test
  void findsARunByItsIdAndNoOther() {
    RunFact one = ledger.runLists().find("s1").orElseThrow();
    assertEquals(Tags.of(1), one.tag());
    assertEquals("FAIL", one.verdict());
    assertTrue(ledger.runLists().find("s").isEmpty());
    assertTrue(ledger.runLists().find("s1' OR '1'='1").isEmpty());
    assertEquals(List.of(one), ledger.runLists().of(Tags.of(1)));
    assertEquals(4, ledger.runLists().latest(10).size());
    assertEquals(2, ledger.runLists().latest(2).size());
  }

  /** A sibling is of the same build, and a void run says nothing of any unit. */
  @Test
  void readsBesideARunWhatUnitsOfItsBuildReadAtTheSameLimit() {
    RunFact one = ledger.runLists().find("s1").orElseThrow();
    String limit = Samples.OUTPUT_FULL.id();
    assertEquals(
        List.of(Tags.of(3)),
        ledger.runLists().beside(one, limit, 9).stream().map(RunLists.Beside::tag).toList());
    assertTrue(ledger.runLists().beside(one, "another-limit", 9).isEmpty());
  }

  @Test
  void countsAndListsTheFirstUnitsOfAStage() {
    int proven = ledger.lives().count(Stage.TESTED);
    assertEquals(ledger.lives().at(Stage.TESTED).size(), proven);
    assertEquals(Math.min(2, proven), ledger.lives().at(Stage.TESTED, 2).size());
  }

  private static Identification build(String variant) {
    Identification like = Samples.identification();
    return new Identification(
        like.family(),
        like.keyRevision(),
        variant,
        like.posterior(),
        like.band(),
        like.runnerUp(),
        like.runnerUpPosterior(),
        Map.of(variant, 1.0),
        List.of(),
        "");
  }
}
