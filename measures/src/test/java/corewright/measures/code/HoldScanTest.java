package corewright.measures.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** However a record is cut, its holds are those of the kernels on the whole of it. */
class HoldScanTest {
  private static final Jumps JUMPS = new Jumps(1310);
  private static final int APART = 100;
  private static final int SETTLE = 200;
  private static final double BAND = 60;
  private static final int SIZE = 40_000;

  private final short[] load = Seeded.codes(Seeded.Kind.STEPPING, SIZE, 51);
  private final short[] output = output();

  private short[] output() {
    Random random = new Random(52);
    short[] codes = new short[SIZE];
    double dip = 0;
    for (int i = 0; i < SIZE; i++) {
      dip = i > 0 && Math.abs(load[i] - load[i - 1]) > 1310 ? 900 : dip * Math.exp(-1 / 40.0);
      codes[i] = (short) Math.round(19_660 - dip + 8 * random.nextGaussian());
    }
    return codes;
  }

  /** The kernels on the whole record. */
  private List<HoldCodes> whole() {
    Codes codes = Codes.of(output);
    int[] steps = Jumps.firstOfEach(JUMPS.in(Codes.of(load), 0, SIZE), APART);
    List<HoldCodes> holds = new ArrayList<>();
    CodeCounts counts = new CodeCounts();
    for (int i = -1; i < steps.length; i++) {
      int start = i < 0 ? 0 : steps[i];
      int end = i + 1 < steps.length ? steps[i + 1] : SIZE;
      Optional<CodeStatistics> window = Optional.empty();
      if (end > start + SETTLE) {
        counts.add(codes, start + SETTLE, end);
        window = Optional.of(counts.take());
      }
      boolean edge = i >= 0;
      Optional<EdgeAnswer> answer =
          window
              .filter(w -> edge)
              .map(w -> EdgeAnswer.of(codes, start, start + SETTLE, end, w, BAND));
      holds.add(new HoldCodes(start, window, answer));
    }
    return holds;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7, 100, 1013, 4096, SIZE})
  void cutInEqualBlocks(int block) {
    assertEquals(whole(), scanned(block, new Random(1), false));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void cutAnywhere(long seed) {
    assertEquals(whole(), scanned(3000, new Random(seed), true));
  }

  private List<HoldCodes> scanned(int block, Random random, boolean anywhere) {
    HoldScan scan = new HoldScan(JUMPS, APART, SETTLE, BAND);
    int at = 0;
    while (at < SIZE) {
      int to = Math.min(SIZE, at + (anywhere ? random.nextInt(block) : block));
      scan.add(
          Codes.of(Arrays.copyOfRange(load, at, to)), Codes.of(Arrays.copyOfRange(output, at, to)));
      at = to;
    }
    return scan.finish();
  }

  @Test
  void theRecordHasTheHoldsThatWereMade() {
    List<HoldCodes> holds = whole();
    assertEquals(40, holds.size());
    EdgeAnswer second = holds.get(1).answer().orElseThrow();
    assertEquals(19_660 - 900, second.lowest(), 40);
    assertEquals(40 * Math.log(900 / BAND), second.recovery(), 12);
  }

  /** What came after settling is gone: late is said to be late, and no number is made up. */
  @Test
  void aLateReturnIsSaidToBeLate() {
    output[5065 + 300] = 18_000;
    List<HoldCodes> holds = scanned(512, new Random(1), false);
    assertEquals(EdgeAnswer.LATER, holds.get(5).answer().orElseThrow().recovery());
    assertEquals(301, whole().get(5).answer().orElseThrow().recovery());
  }

  @Test
  void aHoldShorterThanSettlingHasNoWindow() {
    HoldScan scan = new HoldScan(JUMPS, 2, 100, BAND);
    short[] steps = new short[150];
    Arrays.fill(steps, 50, 100, (short) 5000);
    scan.add(Codes.of(steps), Codes.of(new short[150]));
    assertEquals(
        List.of(
            new HoldCodes(0, Optional.empty(), Optional.empty()),
            new HoldCodes(50, Optional.empty(), Optional.empty()),
            new HoldCodes(100, Optional.empty(), Optional.empty())),
        scan.finish());
    assertEquals(List.of(), new HoldScan(JUMPS, 2, 100, BAND).finish());
  }

  @Test
  void refusesChannelsOfDifferentLengthAndOddSettling() {
    HoldScan scan = new HoldScan(JUMPS, 2, 100, BAND);
    Codes one = Codes.of((short) 1);
    Codes two = Codes.of((short) 1, (short) 2);
    assertThrows(IllegalArgumentException.class, () -> scan.add(one, two));
    assertThrows(IllegalArgumentException.class, () -> new HoldScan(JUMPS, 2, 5, BAND));
  }
}
