package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ledger against processes that die and processes that write at the same time. */
class CrashTest {
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void oneUnit() {
    file = folder.resolve("ledger.sqlite");
    try (Ledger ledger = Ledger.open(file, "counter", CLOCK)) {
      ledger.receive(Samples.core(Tags.of(1), "114"));
    }
  }

  @Test
  void whatWasAcknowledgedSurvivesAKill() throws Exception {
    Random random = new Random(4);
    int acknowledged = 0;
    for (int kill = 0; kill < 3; kill++) {
      Process process = WritingProcess.start(file, "bench-1", Integer.MAX_VALUE);
      acknowledged += WritingProcess.acknowledged(process, 1 + random.nextInt(40));
      process.destroyForcibly(); // SIGKILL
      process.waitFor();
      acknowledged += WritingProcess.acknowledged(process, Integer.MAX_VALUE);
      try (Ledger ledger = Ledger.open(file, "reader", CLOCK)) {
        Verification found = ledger.verify();
        assertTrue(found.whole(), found.broken().toString());
        long kept = found.events() - 1;
        assertTrue(kept >= acknowledged, kept + " kept of " + acknowledged);
        assertTrue(kept <= acknowledged + kill + 1, kept + " kept, " + acknowledged + " told");
      }
    }
    assertTrue(acknowledged > 3);
  }

  @Test
  void twoProcessesShareOneFile() throws Exception {
    Process one = WritingProcess.start(file, "bench-1", 60);
    Process two = WritingProcess.start(file, "bench-2", 60);
    Process sameChain = WritingProcess.start(file, "bench-2", 60);
    int acknowledged = 0;
    for (Process process : new Process[] {one, two, sameChain}) {
      acknowledged += WritingProcess.acknowledged(process, Integer.MAX_VALUE);
      assertEquals(0, process.waitFor());
    }
    try (Ledger ledger = Ledger.open(file, "reader", CLOCK)) {
      Verification found = ledger.verify();
      assertTrue(found.whole(), found.broken().toString());
      assertEquals(180, acknowledged);
      assertEquals(181, found.events());
    }
  }
}
