package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.Samples;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
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
      Path told = folder.resolve("told-" + kill);
      Process process = WritingProcess.start(file, "bench-1", Integer.MAX_VALUE, told);
      int enough = 1 + random.nextInt(40);
      while (WritingProcess.acknowledged(told) < enough && process.isAlive()) {
        Thread.sleep(2);
      }
      process.destroyForcibly().waitFor(); // SIGKILL
      acknowledged += WritingProcess.acknowledged(told);
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
    List<Process> processes = new ArrayList<>();
    List<String> chains = List.of("bench-1", "bench-2", "bench-2");
    for (String chain : chains) {
      Path told = folder.resolve("told-" + processes.size());
      processes.add(WritingProcess.start(file, chain, 60, told));
    }
    int acknowledged = 0;
    for (int i = 0; i < chains.size(); i++) {
      assertEquals(0, processes.get(i).waitFor());
      acknowledged += WritingProcess.acknowledged(folder.resolve("told-" + i));
    }
    try (Ledger ledger = Ledger.open(file, "reader", CLOCK)) {
      Verification found = ledger.verify();
      assertTrue(found.whole(), found.broken().toString());
      assertEquals(180, acknowledged);
      assertEquals(181, found.events());
    }
  }
}
