package corewright.bench.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A capture that is longer than what stays on the heap says the same, raw and sealed, as the rule
 * that its codes were made by, and as the whole of it read at once.
 */
class LongCaptureTest {
  private static final int BEFORE = 1_000; // samples of a step that is no hold
  private static final int HELD = CodeColumn.BLOCK + 70_000;
  private static final int LOST = CodeColumn.BLOCK + 50_000; // from here 100 never came
  private static final int FRAME = 10_000;

  @TempDir private Path folder;

  @Test
  void everyCodeIsTheOneThatWasWritten() {
    Path raw = folder.resolve("run" + CaptureFile.RAW);
    Path sealed = folder.resolve("run" + CaptureFile.SEALED);
    write(raw);
    StoredCapture whole = CaptureFile.read(raw);
    CaptureFile.seal(whole, sealed);
    for (Path file : List.of(raw, sealed)) {
      List<Long> read = new ArrayList<>();
      Recording recording = Recording.read(file, (at, all) -> read.add(100 * at / all));
      Capture held = recording.capture();
      assertEquals(HELD, held.size());
      assertEquals(List.of(new Capture.Gap(LOST, 100)), held.gaps());
      int wrong = 0;
      for (int i = 0; i < HELD; i++) {
        boolean lost = i >= LOST && i < LOST + 100;
        wrong += held.output().codeAt(i) == code(BEFORE + (lost ? LOST - 1 : i)) ? 0 : 1;
      }
      assertEquals(0, wrong, "codes of " + file);
      assertEquals(0.004, held.output().lsb());
      assertEquals(whole.holds().orElseThrow().gaps(), held.gaps());
      assertEquals(RunEnd.completed(5), recording.end().orElseThrow());
      assertEquals(read.stream().sorted().toList(), read, "the progress never goes back");
      assertTrue(read.size() > 60 && read.get(read.size() - 1) == 100, "told " + read.size());
    }
  }

  @Test
  void aGapThatNoRecordCanHaveIsTold() {
    JoinedSegments joined = new JoinedSegments(kind -> true);
    joined.header(
        new CaptureHeader(
            1e6, List.of(new Channel("output", "V", 0.004, -1)), List.of(), new TreeMap<>()));
    joined.segment("idle", "HOLD", 1e6);
    joined.samples(0, new short[][] {{1}});
    assertEquals(
        "1999999999 samples missing before sample 2000000000 are more than can be measured",
        assertThrows(
                IllegalArgumentException.class,
                () -> joined.samples(2_000_000_000, new short[][] {{1}}))
            .getMessage());
  }

  private static void write(Path raw) {
    CaptureHeader header =
        new CaptureHeader(
            1e6, List.of(new Channel("output", "V", 0.004, -1)), List.of(), new TreeMap<>());
    try (RawWriter writer = RawWriter.create(raw, header)) {
      writer.segment("dead", "DEAD_CHECK", 1e6);
      writer.frame(frame(0, BEFORE));
      writer.segment("idle", "HOLD", 1e6);
      int split = BEFORE + LOST;
      for (int at = BEFORE; at < split; at += FRAME) {
        writer.frame(frame(at, Math.min(FRAME, split - at)));
      }
      writer.frame(frame(split + 100, BEFORE + HELD - split - 100));
      writer.end(RunEnd.completed(5));
    }
  }

  private static Frame frame(int first, int samples) {
    short[] codes = new short[samples];
    for (int i = 0; i < samples; i++) {
      codes[i] = code(first + i);
    }
    return new Frame(first, Frames.GOOD, new short[][] {codes}, 0);
  }

  /** Runs through all codes, negative ones among them, each block otherwise than the last. */
  private static short code(int i) {
    return (short) (i + (i >> 16) * 7);
  }
}
