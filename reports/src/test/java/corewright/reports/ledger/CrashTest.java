package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.reports.Samples;
import corewright.reports.ledger.WritingProcess.Work;
import java.nio.file.Files;
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

  /**
   * SIGKILL at random moments: three of five while it writes, one while it copies the ledger, one
   * while it brings an old ledger up to date. {@code -Dkill.times=200} makes it a soak.
   */
  @Test
  void whatWasAcknowledgedSurvivesAKill() throws Exception {
    int kills = Integer.getInteger("kill.times", 5);
    Random random = new Random(4);
    int acknowledged = 0;
    int told = 0;
    long lost = 0;
    List<String> broken = new ArrayList<>();
    for (int kill = 0; kill < kills; kill++) {
      Work work =
          List.of(Work.WRITE, Work.BACKUP, Work.WRITE, Work.MIGRATE, Work.WRITE).get(kill % 5);
      Path ledger = work == Work.MIGRATE ? folder.resolve("old-" + kill + ".db") : file;
      if (work == Work.MIGRATE) {
        OldLedger.write(ledger);
      }
      Path lines = folder.resolve("told-" + kill);
      killed(
          WritingProcess.start(ledger, "bench-1", Integer.MAX_VALUE, lines, work),
          lines,
          work,
          random);
      int now = WritingProcess.acknowledged(lines);
      told += now;
      if (work != Work.MIGRATE) {
        acknowledged += now;
      }
      long expected = work == Work.MIGRATE ? OldLedger.EVENTS + now : 1 + acknowledged;
      try (Ledger survived = Ledger.open(ledger, "reader", CLOCK)) {
        Verification found = survived.verify();
        broken.addAll(found.broken());
        lost += Math.max(0, expected - found.events());
        assertTrue(found.events() <= expected + kill + 1, found.events() + " of " + expected);
        assertEquals(Tags.of(1), survived.lives().standing(Tags.of(1)).tag());
      }
      for (String copy : WritingProcess.lines(lines)) {
        if (!copy.startsWith("kept ")) {
          broken.addAll(Ledger.verify(Path.of(copy), Expectations.NONE).broken());
          Files.delete(Path.of(copy));
        }
      }
    }
    String result =
        "kill: kills=%d acknowledged=%d lost=%d broken=%d"
            .formatted(kills, told, lost, broken.size());
    assertEquals(List.of(), broken, result);
    assertEquals(0, lost, result);
    assertTrue(told > kills / 2, result);
    if (Integer.getInteger("kill.times") != null) {
      Files.writeString(Files.createDirectories(Path.of("target")).resolve("kill.txt"), result);
    }
  }

  /** Somewhere in the first forty writes, or within a moment of coming to an old ledger. */
  private static void killed(Process process, Path lines, Work work, Random random)
      throws Exception {
    int enough = 1 + random.nextInt(work == Work.WRITE ? 40 : 3);
    int moment_ms = random.nextInt(400);
    while (process.isAlive()
        && (work == Work.MIGRATE
            ? !WritingProcess.hasBegun(lines)
            : WritingProcess.acknowledged(lines) < enough)) {
      Thread.sleep(2);
    }
    if (work != Work.WRITE) {
      Thread.sleep(moment_ms / (work == Work.BACKUP ? 20 : 1));
    }
    process.destroyForcibly().waitFor(); // SIGKILL
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
