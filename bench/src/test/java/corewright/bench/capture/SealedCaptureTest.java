package corewright.bench.capture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import corewright.bench.record.RunEnd;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SealedCaptureTest {
  private static final RunEnd TRIPPED =
      RunEnd.tripped(
          RunEnd.Trip.OUTPUT_UNDER, "full", 1.25, "The output fell to 29.8 V.", "Let it cool.");

  @TempDir Path folder;
  private Path raw;
  private Path sealed;

  @BeforeEach
  void write() {
    raw = folder.resolve("run" + CaptureFile.RAW);
    sealed = folder.resolve("run" + CaptureFile.SEALED);
    Random noise = new Random(1);
    try (RawWriter writer = RawWriter.create(raw, Frames.HEADER)) {
      writer.segment("idle", "HOLD", 1000);
      for (int first = 0; first < 200_000; first += 20_000) {
        var frame = Frames.frame(first, 20_000);
        for (int i = 0; i < 20_000; i++) {
          frame.codes()[1][i] = (short) (12_000 + noise.nextInt(9));
        }
        writer.frame(frame);
      }
      writer.segment("full", "HOLD", 1000);
      writer.frame(Frames.frame(200_500, 10));
      writer.frame(Frames.frame(200_520, 10));
      writer.end(TRIPPED);
    }
  }

  @Test
  void sealingChangesNothing() throws IOException {
    String sha256 = CaptureFile.seal(CaptureFile.read(raw), sealed);
    StoredCapture before = CaptureFile.read(raw);
    StoredCapture after = CaptureFile.read(sealed);
    assertEquals(before.header(), after.header());
    assertEquals(TRIPPED, after.end().orElseThrow());
    assertEquals(before.segments().size(), after.segments().size());
    for (int i = 0; i < before.segments().size(); i++) {
      Segment one = before.segments().get(i);
      Segment other = after.segments().get(i);
      assertEquals(List.of(one.id(), one.kind()), List.of(other.id(), other.kind()));
      assertEquals(one.first(), other.first());
      assertEquals(one.gaps(), other.gaps());
      assertTrue(java.util.Arrays.deepEquals(one.codes(), other.codes()));
    }
    assertEquals(2, after.holds().orElseThrow().gaps().size(), "one between, one inside");
    assertEquals(sha256, CaptureFile.sha256(sealed));
    assertTrue(Files.size(sealed) < Files.size(raw) / 2, "deflated");
  }

  @Test
  void theHashIsTheOneEveryoneComputes() throws IOException {
    Path abc = Files.writeString(folder.resolve("abc"), "abc");
    // FIPS 180-4, example of SHA-256 for "abc" (from memory)
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        CaptureFile.sha256(abc));
  }

  @Test
  void anotherProgramReadsTheSameNumbers() throws IOException, InterruptedException {
    assumeTrue(Files.exists(Path.of("/usr/bin/h5dump")), "h5dump (hdf5-tools) is not installed");
    CaptureFile.seal(CaptureFile.read(raw), sealed);
    String head = h5dump("-H", "-p", sealed.toString());
    assertTrue(head.contains("COMPRESSION DEFLATE { LEVEL 4 }"), head);
    assertTrue(head.contains("PREPROCESSING SHUFFLE"), head);
    assertTrue(h5dump("-a", "/000-idle/output/unit", sealed.toString()).contains("\"V\""));
    assertTrue(h5dump("-a", "/000-idle/output/lsb", sealed.toString()).contains("0.004"));
    assertTrue(h5dump("-d", "/001-full/gaps", sealed.toString()).contains("10, 10"));

    Path codes = folder.resolve("codes.bin");
    h5dump("-d", "/000-idle/output", "-b", "LE", "-o", codes.toString(), sealed.toString());
    byte[] bytes = Files.readAllBytes(codes);
    short[] dumped = new short[bytes.length / 2];
    java.nio.ByteBuffer.wrap(bytes)
        .order(java.nio.ByteOrder.LITTLE_ENDIAN)
        .asShortBuffer()
        .get(dumped);
    assertArrayEquals(CaptureFile.read(raw).segments().get(0).codes()[1], dumped);
  }

  private static String h5dump(String... arguments) throws IOException, InterruptedException {
    List<String> command = new java.util.ArrayList<>(List.of("/usr/bin/h5dump"));
    command.addAll(List.of(arguments));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), out);
    return out;
  }
}
