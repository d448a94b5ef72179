package corewright.bench.capture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import corewright.bench.record.RunEnd;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The raw capture that bench/README.md shows byte by byte is the one that is written. */
class RawBytesTest {
  private static final Path PAGE =
      Path.of(System.getProperty("corewright.home"), "bench", "README.md");

  @TempDir private Path folder;

  @Test
  void thePageShowsTheBytesThatAreWritten() throws IOException {
    assertEquals(hex(Files.readAllBytes(written())), hex(shown()));
  }

  @Test
  void whatThePageShowsIsRead() throws IOException {
    Path file = folder.resolve("shown" + CaptureFile.RAW);
    Files.write(file, shown());
    StoredCapture capture = CaptureFile.read(file);
    assertEquals(2, capture.segments().get(0).samples());
    assertArrayEquals(new short[] {19_200, -1}, capture.segments().get(0).codes()[0]);
    assertEquals(RunEnd.completed(0.002), capture.end().orElseThrow());
  }

  /** What an operating system says may hold tabs and lines; they must not shift the words. */
  @Test
  void wordsKeepTheirPlace() {
    Path file = folder.resolve("torn" + CaptureFile.RAW);
    RunEnd end = new RunEnd(RunEnd.Kind.BENCH_FAULT, "rest", 1, "no\tanswer\nat all", "Look.");
    try (RawWriter writer = RawWriter.create(file, Frames.HEADER)) {
      writer.end(end);
    }
    RunEnd read = CaptureFile.read(file).end().orElseThrow();
    assertEquals("no answer at all", read.saw());
    assertEquals("Look.", read.remedy());
  }

  private Path written() {
    Path file = folder.resolve("written" + CaptureFile.RAW);
    CaptureHeader header =
        new CaptureHeader(
            1000, List.of(new Channel("output", "V", 0.0025, 0)), List.of(), new TreeMap<>());
    Status status = new Status(true, true, false, false, false, false);
    try (RawWriter writer = RawWriter.create(file, header)) {
      writer.segment("rest", "HOLD", 1000);
      writer.frame(new Frame(0, status, new short[][] {{19_200, -1}}, 0));
      writer.end(RunEnd.completed(0.002));
    }
    return file;
  }

  /** Bytes of the table's first column. */
  private static byte[] shown() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf("<!-- raw bytes -->");
    String table = page.substring(from, page.indexOf("<!-- end of raw bytes -->"));
    Matcher cell = Pattern.compile("(?m)^\\| `([0-9a-f ]+)` \\|").matcher(table);
    StringBuilder hex = new StringBuilder();
    while (cell.find()) {
      hex.append(cell.group(1).replace(" ", ""));
    }
    return HexFormat.of().parseHex(hex);
  }

  private static String hex(byte[] bytes) {
    return HexFormat.ofDelimiter(" ").formatHex(bytes);
  }
}
