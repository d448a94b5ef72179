package corewright.bench.capture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.measures.code.CodeStatistics;
import corewright.measures.code.Codes;
import corewright.measures.code.EdgeAnswer;
import corewright.measures.code.HoldCodes;
import corewright.measures.code.Jumps;
import corewright.measures.spectrum.Spectrum;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A record in memory, and the same through a file, against plain arithmetic on it. */
class CodeSurveyTest {
  private static final double LSB = 80 / 32768.0;
  private static final int HOLD = 26_001;
  private static final int SIZE = 9 * HOLD + 5;
  private static final int SETTLE = 5000;
  private static final Jumps JUMPS = new Jumps(1310);
  private static final double BAND = 196.6;

  @TempDir Path folder;

  private final short[] load = new short[SIZE];
  private final short[] output = new short[SIZE];

  CodeSurveyTest() {
    Random random = new Random(61);
    for (int i = 0; i < SIZE; i++) {
      int level = i / HOLD % 4;
      load[i] = (short) Math.round(3277 * level + 26 * random.nextGaussian());
      double dip = i < HOLD ? 0 : 1300 * Math.exp(-(i % HOLD) / 800.0);
      double ripple = 33 * Math.sin(2 * Math.PI * 0.1003 * i);
      output[i] =
          (short) Math.round(19_661 - 12 * level - dip + ripple + 8 * random.nextGaussian());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5})
  void anyNumberOfThreadsFindsTheSame(int threads) {
    CodeSurvey survey = new CodeSurvey(threads);
    int[] steps = survey.steps(Codes.of(load), JUMPS, 100);
    assertArrayEquals(IntStream.rangeClosed(1, 9).map(k -> k * HOLD).toArray(), steps);
    List<HoldCodes> holds = survey.holds(Codes.of(output), steps, SETTLE, BAND);
    assertEquals(10, holds.size());
    for (int k = 0; k < 9; k++) {
      assertHold(holds.get(k), k);
    }
    assertEquals(9L * HOLD, holds.get(9).start());
    assertTrue(holds.get(9).window().isEmpty(), "five samples are no window");
    Spectrum spectrum = survey.spectrum(Codes.of(output), 1e6, LSB);
    assertEquals(6, spectrum.segments());
    assertAlike(new CodeSurvey(1).spectrum(Codes.of(output), 1e6, LSB), spectrum);
  }

  private void assertHold(HoldCodes hold, int index) {
    int start = index * HOLD;
    assertEquals(start, hold.start());
    CodeStatistics window = hold.window().orElseThrow();
    double[] x =
        IntStream.range(start + SETTLE, start + HOLD).mapToDouble(i -> output[i]).toArray();
    assertEquals(x.length, window.count());
    assertEquals(Arrays.stream(x).sum(), window.sum());
    assertEquals(Arrays.stream(x).map(v -> v * v).sum(), window.squares());
    Arrays.sort(x);
    assertEquals(x[x.length / 2], window.median());
    assertEquals(index > 0, hold.answer().isPresent());
    if (index > 0) {
      EdgeAnswer answer = hold.answer().orElseThrow();
      // Closed form, within what ripple and noise can shift it.
      assertEquals(800 * Math.log(1300 / BAND), answer.recovery(), 400);
      assertEquals(window.mean() - 1300, answer.lowest(), 60);
    }
  }

  /** Within the rounding of single precision, which the strongest bins leave in all. */
  private static void assertAlike(Spectrum one, Spectrum other) {
    double largest = IntStream.range(0, one.size()).mapToDouble(one::density).max().orElseThrow();
    for (int bin = 0; bin < one.size(); bin++) {
      double allowed = 2e-6 * one.density(bin) + 1e-7 * largest;
      assertEquals(one.density(bin), other.density(bin), allowed, "bin " + bin);
    }
  }

  /**
   * Frames of any size, some that never came: the file says what the record with holes filled says.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 333, 4096})
  void aFileSaysWhatTheRecordSays(int most) throws IOException {
    Path path = folder.resolve("long.raw");
    long missing = write(path, most);
    RawScan.Result found =
        RawScan.of(path, new RawScan.Settings(0.2, 100, SETTLE / 1e6, BAND * LSB));
    assertEquals(SIZE, found.samples());
    assertEquals(missing, found.missing());
    CodeSurvey survey = new CodeSurvey(1);
    int[] steps = survey.steps(Codes.of(load), JUMPS, 100);
    assertEquals(survey.holds(Codes.of(output), steps, SETTLE, BAND), found.holds());
    assertAlike(survey.spectrum(Codes.of(output), 1e6, LSB), found.spectrum().orElseThrow());
    // What the program reads whole is the same record.
    assertEquals(SIZE, CaptureFile.read(path).holds().orElseThrow().size());
  }

  /** Writes the record, leaves some of it out, and fills the holes in what is compared. */
  private long write(Path path, int most) {
    CaptureHeader header =
        new CaptureHeader(
            1e6,
            List.of(
                new Channel("input", "V", 20 / 32768.0, 0),
                new Channel("output", "V", LSB, 0),
                new Channel("load", "A", 5 / 32768.0, 0)),
            List.of("input"),
            new TreeMap<>());
    Random random = new Random(62);
    long missing = 0;
    try (RawWriter writer = RawWriter.create(path, header)) {
      writer.segment("idle", "DEAD_CHECK", 1e6);
      writer.frame(new Frame(0, Frames.GOOD, new short[3][50], 0));
      writer.segment("all", "HOLD", 1e6);
      int at = 0;
      while (at < SIZE) {
        int to = Math.min(SIZE, at + (most == 1 ? 1 : 1 + random.nextInt(most)));
        boolean lost = at > 0 && to < SIZE && random.nextInt(20) == 0 && at / HOLD == to / HOLD;
        if (lost) {
          Arrays.fill(load, at, to, load[at - 1]);
          Arrays.fill(output, at, to, output[at - 1]);
          missing += to - at;
        } else {
          short[][] codes = {
            new short[to - at], Arrays.copyOfRange(output, at, to), Arrays.copyOfRange(load, at, to)
          };
          writer.frame(new Frame(50L + at, Frames.GOOD, codes, 0));
        }
        at = to;
      }
    }
    return missing;
  }

  @Test
  void aFileThatIsNoCaptureOrHasNoLoadIsRefused() throws IOException {
    RawScan.Settings settings = new RawScan.Settings(0.2, 100, 0.005, 0.48);
    Path text = Files.writeString(folder.resolve("a.csv"), "time_s,output_V\n0,48\n");
    assertThrows(IllegalArgumentException.class, () -> RawScan.of(text, settings));
    Path other = folder.resolve("other.raw");
    CaptureHeader header =
        new CaptureHeader(
            1e6, List.of(new Channel("output", "V", LSB, 0)), List.of(), new TreeMap<>());
    RawWriter.create(other, header).close();
    assertThrows(IllegalArgumentException.class, () -> RawScan.of(other, settings));
  }
}
