package corewright.station.web.live;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Status;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Held to lowest and highest of every column, counted the slow way. */
class DecimatorTest {
  private static final List<Channel> CHANNELS =
      List.of(
          new Channel("input", "V", 0.001, 0),
          new Channel("output", "V", 0.002, 1),
          new Channel("load", "A", -0.001, 0));

  private static final Status WHOLE = new Status(true, true, false, false, false, false);

  @ParameterizedTest
  @CsvSource({"1000,1", "9999,1", "250000,1", "2000000,1", "44100,3", "1000,7"})
  void lowestAndHighestOfEachColumnWhateverTheRateAndTheFrames(int rate_Hz, int column_ms) {
    Columns columns = new Columns(column_ms);
    Decimator decimator = new Decimator(columns);
    decimator.begin(CHANNELS, rate_Hz, "input");
    SplittableRandom random = new SplittableRandom(rate_Hz + column_ms);
    int samples = Math.max(200, rate_Hz / 4);
    short[][] all = new short[3][samples];
    for (short[] channel : all) {
      for (int i = 0; i < samples; i++) {
        channel[i] = (short) random.nextInt(-20_000, 20_000);
      }
    }
    for (int at = 0; at < samples; ) {
      int to = Math.min(samples, at + 1 + random.nextInt(3000));
      decimator.add(frame(all, at, to));
      at = to;
    }
    decimator.close();

    long last = (samples - 1L) * 1000 / ((long) rate_Hz * column_ms);
    assertEquals(last + 1, columns.size());
    int[] got = columns.copy(0, columns.size());
    for (int c = 0; c < columns.size(); c++) {
      int[] expected = new int[Columns.WIDTH];
      Arrays.fill(expected, Columns.NOTHING);
      for (int i = 0; i < samples; i++) {
        if (i * 1000L / ((long) rate_Hz * column_ms) == c) {
          join(expected, 0, 2 * all[1][i] + 1000);
          join(expected, 2, all[0][i]);
          join(expected, 4, -all[2][i]);
        }
      }
      assertArrayEquals(
          expected,
          Arrays.copyOfRange(got, c * Columns.WIDTH, (c + 1) * Columns.WIDTH),
          "column " + c);
      if (c > 20) {
        break; // the slow way is slow
      }
    }
  }

  private static void join(int[] into, int at, int value) {
    into[at] = into[at] == Columns.NOTHING ? value : Math.min(into[at], value);
    into[at + 1] = into[at + 1] == Columns.NOTHING ? value : Math.max(into[at + 1], value);
  }

  @Test
  void whatWasLostStaysEmptyAndTimeGoesOnAtAnotherRate() {
    Columns columns = new Columns(1);
    Decimator decimator = new Decimator(columns);
    decimator.begin(CHANNELS, 2000, "input");
    short[][] ten = new short[3][10];
    decimator.add(shifted(ten, 0)); // 0 to 5 ms
    decimator.add(shifted(ten, 20)); // 10 to 15 ms: five columns were lost
    decimator.begin(CHANNELS, 1000, "input");
    decimator.add(shifted(ten, 0));
    decimator.close();
    assertEquals(15 + 10, columns.size());
    assertEquals(0.025, columns.at_s());
    int[] got = columns.copy(0, 25);
    for (int c = 0; c < 25; c++) {
      boolean lost = c >= 5 && c < 10;
      assertEquals(lost ? Columns.NOTHING : 1000, got[c * Columns.WIDTH], "column " + c);
    }
    int[] joined = Columns.joined(got, 10);
    assertEquals(3 * Columns.WIDTH, joined.length);
    assertEquals(1000, joined[0]);
  }

  private static Digitizer.Frame frame(short[][] all, int from, int to) {
    short[][] part =
        Arrays.stream(all).map(c -> Arrays.copyOfRange(c, from, to)).toArray(short[][]::new);
    return new Digitizer.Frame(from, WHOLE, part, 0);
  }

  private static Digitizer.Frame shifted(short[][] codes, long first) {
    return new Digitizer.Frame(first, WHOLE, codes, 0);
  }
}
