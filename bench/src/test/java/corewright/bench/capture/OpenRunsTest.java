package corewright.bench.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.RunEnd;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenRunsTest {
  @TempDir Path folder;
  private OpenRun run;

  @BeforeEach
  void name() {
    run =
        new OpenRun(
            "run-7", folder.resolve("new"), new TreeMap<>(Map.of("tag", "CW-1", "bench", "b\t1")));
  }

  @Test
  void aRunThatGoesOnIsNotOpenAndOneThatWasLeftIs() {
    try (OpenRuns.Running running = OpenRuns.begin(run)) {
      assertEquals(List.of(), OpenRuns.in(run.folder()), "its program lives");
      assertEquals(run, running.run());
    }
    List<OpenRun> left = OpenRuns.in(run.folder());
    assertEquals("run-7", left.get(0).runId());
    assertEquals(Map.of("tag", "CW-1", "bench", "b 1"), left.get(0).notes());
    OpenRuns.settled(left.get(0));
    OpenRuns.settled(left.get(0));
    assertEquals(List.of(), OpenRuns.in(run.folder()));
  }

  @Test
  void aRunIsBegunOnce() {
    OpenRuns.begin(run).close();
    assertThrows(UncheckedIOException.class, () -> OpenRuns.begin(run));
  }

  @Test
  void aFolderThatIsNotThereHasNoRuns() {
    assertEquals(List.of(), OpenRuns.in(folder.resolve("nowhere")));
  }

  @Test
  void whatADeadProgramLeftIsSealedUpToItsLastFrame() {
    OpenRuns.begin(run).close();
    try (RawWriter raw = RawWriter.create(run.raw(), Frames.HEADER)) {
      raw.segment("dead", "DEAD_CHECK", 1000);
      raw.frame(Frames.frame(0, 100));
      raw.segment("full", "HOLD", 1000);
      raw.frame(Frames.frame(100, 50));
    }
    Recovered recovered = OpenRuns.recover(OpenRuns.in(run.folder()).get(0));
    assertEquals(RunEnd.Kind.ABANDONED, recovered.end().kind());
    assertEquals("full", recovered.end().step());
    assertEquals(0.15, recovered.end().at_s(), 1e-12);
    assertEquals(50, recovered.capture().orElseThrow().size());
    Path sealed = recovered.file().orElseThrow();
    assertEquals(recovered.sha256(), CaptureFile.sha256(sealed));
    assertEquals(recovered.end(), CaptureFile.read(sealed).end().orElseThrow());
    assertEquals(1, OpenRuns.in(run.folder()).size(), "open until it is settled");
    assertEquals(
        recovered.end(), OpenRuns.recover(recovered.run()).end(), "and may be recovered again");
  }

  @Test
  void aRunThatEndedBeforeItsProgramDiedKeepsItsEnd() {
    OpenRuns.begin(run).close();
    try (RawWriter raw = RawWriter.create(run.raw(), Frames.HEADER)) {
      raw.segment("full", "HOLD", 1000);
      raw.frame(Frames.frame(0, 100));
      raw.end(RunEnd.completed(0.1));
    }
    assertEquals(RunEnd.Kind.COMPLETED, OpenRuns.recover(run).end().kind());
  }

  @Test
  void aRunThatSampledNothingIsAbandonedToo() {
    OpenRuns.begin(run).close();
    Recovered recovered = OpenRuns.recover(run);
    assertEquals(RunEnd.Kind.ABANDONED, recovered.end().kind());
    assertTrue(recovered.file().isEmpty() && recovered.capture().isEmpty());
    assertTrue(!Files.exists(run.sealed()));
  }
}
