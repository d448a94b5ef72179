package corewright.bench.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.RunEnd;
import corewright.files.BadFile;
import corewright.measures.Capture;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RawCaptureTest {
  @TempDir Path folder;

  private Path written() {
    Path path = folder.resolve("run" + CaptureFile.RAW);
    try (RawWriter writer = RawWriter.create(path, Frames.HEADER)) {
      writer.segment("dead", "DEAD_CHECK", 1000);
      writer.frame(Frames.frame(0, 4));
      writer.segment("idle", "HOLD", 1000);
      writer.frame(Frames.frame(4, 4));
      writer.frame(Frames.frame(10, 2)); // 8 and 9 never came
      writer.segment("full", "HOLD", 1000);
      writer.frame(Frames.frame(12, 3));
      writer.frame(Frames.frame(15, 3));
      writer.segment("away", "DISCHARGE", 1000);
      writer.end(RunEnd.completed(0.018));
    }
    return path;
  }

  @Test
  void whatWasWrittenIsReadBack() {
    StoredCapture capture = CaptureFile.read(written());
    assertEquals(Frames.HEADER, capture.header());
    assertEquals(Optional.of(RunEnd.completed(0.018)), capture.end());
    assertEquals(
        List.of("dead", "idle", "full"),
        capture.segments().stream().map(Segment::id).toList(),
        "a step without samples leaves no segment");
    assertEquals(4, capture.segments().get(1).first());
    assertEquals(8, capture.segments().get(1).samples());
  }

  @Test
  void theHoldsAreOneCaptureAndWhatIsMissingIsAGap() {
    Capture holds = CaptureFile.read(written()).holds().orElseThrow();
    assertEquals(14, holds.size());
    assertEquals(List.of(new Capture.Gap(4, 2)), holds.gaps());
    assertEquals(104, holds.output().codeAt(0));
    assertEquals(107, holds.output().codeAt(4), "the last value is held over the gap");
    assertEquals(107, holds.output().codeAt(5));
    assertEquals(110, holds.output().codeAt(6));
    assertEquals(117, holds.output().codeAt(13));
    assertEquals(-1 + 0.004 * 117, holds.output().at(13), 1e-12);
    assertEquals("input", holds.feeds().get(0).name());
    assertEquals(0.017, holds.feeds().get(0).voltage().at(13), 1e-12);
    assertTrue(holds.load().isPresent() && holds.inputCurrent().isEmpty());
  }

  @Test
  void aFileCutAnywhereIsReadUpToItsLastWholeFrame() throws IOException {
    byte[] whole = Files.readAllBytes(written());
    List<Integer> ends = ends(whole);
    for (int length = ends.get(1); length <= whole.length; length++) {
      Path cut = Files.write(folder.resolve("cut"), Arrays.copyOf(whole, length));
      int at = length;
      long records = ends.stream().filter(end -> end <= at).count() - 2; // mark and header
      int samples = List.of(0, 0, 4, 4, 8, 10, 10, 13, 16, 16, 16).get((int) records);
      StoredCapture read = CaptureFile.read(cut);
      assertEquals(
          samples,
          read.segments().stream().mapToInt(s -> s.samples()).sum()
              - (records >= 5 ? 2 : 0), // the gap
          "cut at " + length);
      assertEquals(records == 10, read.end().isPresent(), "cut at " + length);
    }
  }

  @Test
  void aDamagedFrameEndsTheCaptureThere() throws IOException {
    byte[] whole = Files.readAllBytes(written());
    int frame = ends(whole).get(4); // beginning of the second frame of all
    whole[frame + 20] ^= 1;
    StoredCapture read = CaptureFile.read(Files.write(folder.resolve("damaged"), whole));
    assertEquals(List.of("dead"), read.segments().stream().map(Segment::id).toList());
    assertTrue(read.end().isEmpty());
  }

  @Test
  void whatIsNoCaptureIsRefusedWithItsName() throws IOException {
    Path csv = Files.writeString(folder.resolve("record.csv"), "time_s,output_V\n0,48\n");
    BadFile bad = assertThrows(BadFile.class, () -> CaptureFile.read(csv));
    assertTrue(bad.getMessage().startsWith(csv + ": capture: "), bad.getMessage());
    assertThrows(BadFile.class, () -> CaptureFile.read(folder.resolve("missing")));
    assertEquals(false, CaptureFile.isCapture(csv));
  }

  @Test
  void aFileIsNeverOverwritten() {
    Path path = written();
    assertThrows(RuntimeException.class, () -> RawWriter.create(path, Frames.HEADER));
  }

  /** Where the mark and each record end, by the lengths alone. */
  private static List<Integer> ends(byte[] file) {
    ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    List<Integer> ends = new java.util.ArrayList<>(List.of(8));
    for (int at = 8; at < file.length; at = ends.get(ends.size() - 1)) {
      ends.add(at + 9 + bytes.getInt(at + 1));
    }
    return ends;
  }
}
