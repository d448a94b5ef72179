package corewright.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.capture.LogFile;
import corewright.bench.log.made.MadeLog;
import corewright.bench.log.table.Choices;
import corewright.files.BadFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Logs of known truth over languages, encodings, rates and layouts. A small share here; {@code
 * .ci/soak/logs} runs 500 and prints the counts.
 */
class MadeLogsTest {
  private static final int USUAL = 60;

  @TempDir private Path folder;

  @Test
  void almostAllAreReadRightAndNoneTheWrongWayOrWithAWrongNumber() throws IOException {
    int files = Integer.getInteger("corewright.logs", USUAL);
    Path kept = Path.of(System.getProperty("corewright.logs.folder", folder.toString()));
    Files.createDirectories(kept);
    int right = 0;
    List<String> wrongWay = new ArrayList<>();
    List<String> wrongNumber = new ArrayList<>();
    List<String> missed = new ArrayList<>();
    for (int i = 0; i < files; i++) {
      MadeLog log = MadeLog.of(i);
      Path file = Files.write(kept.resolve(log.name()), log.bytes());
      MadeCheck.Outcome outcome = MadeCheck.of(log, read(file));
      right += outcome.right() ? 1 : 0;
      if (!outcome.right()) {
        missed.add(log.name() + ": " + outcome.words());
      }
      if (outcome.wrongWay()) {
        wrongWay.add(log.name() + ": " + outcome.words());
      }
      if (!outcome.wrongNumbers().isEmpty()) {
        wrongNumber.add(log.name() + ": " + outcome.wrongNumbers());
      }
    }
    missed.forEach(m -> System.out.println("missed: " + m));
    wrongNumber.forEach(m -> System.out.println("wrong number: " + m));
    System.out.printf(
        Locale.ROOT,
        "logs: files=%d right=%d wrongWay=%d wrongNumber=%d%n",
        files,
        right,
        wrongWay.size(),
        wrongNumber.size());
    assertEquals(List.of(), wrongWay);
    assertEquals(List.of(), wrongNumber);
    assertTrue(right >= 0.95 * files, right + " of " + files + " right; " + missed);
  }

  private static Optional<LogReading> read(Path file) {
    try {
      return Optional.of(
          LogAnalysis.of(
              LogFile.open(file),
              new LogRequest(
                  Optional.empty(), MadeFamilies.ALL, Choices.none(), Optional.empty())));
    } catch (BadFile refused) {
      return Optional.empty();
    }
  }
}
