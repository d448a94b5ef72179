package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import corewright.bench.record.RunEnd;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;

/** A frame is passed over whole only where looking at each of its samples finds nothing either. */
class BeyondTest {
  private static final Status SOUND = new Status(true, true, false, false, false, false);
  private static final int RATE_HZ = 1000;
  private static final double ALLOWED_S = 0.003;

  /** Samples in a row that are beyond, counted one by one over all frames: the slow way. */
  private int row;

  private OptionalInt oneByOne(FrameView view, DoublePredicate beyond) {
    for (int i = 0; i < view.samples(); i++) {
      row = beyond.test(view.value(0, i)) ? row + 1 : 0;
      if (row > ALLOWED_S * RATE_HZ) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  private static Beyond beyond(DoublePredicate side) {
    return new Beyond(
        RunEnd.Trip.OUTPUT_OVER, "output", side, ALLOWED_S, view -> true, (v, view) -> "");
  }

  /** Also for a channel that is wired the other way round, and for codes at either rail. */
  @Test
  void itTripsAtTheSampleAtWhichCountingEverySampleDoes() {
    Random random = new Random(20_261_129);
    int tripped = 0;
    for (int round = 0; round < 2000; round++) {
      Channel channel = new Channel("output", "V", round % 2 == 0 ? 0.004 : -0.004, 1);
      double limit = random.nextInt(200) - 100;
      DoublePredicate side = random.nextBoolean() ? v -> v > limit : v -> v < limit;
      Beyond trip = beyond(side);
      row = 0;
      OptionalInt expected = OptionalInt.empty();
      for (long first = 0; expected.isEmpty() && first < 40; first += 5) {
        Frame frame = new Frame(first, SOUND, new short[][] {codes(random)}, 0);
        FrameView view = new FrameView(frame, List.of(channel), first, RATE_HZ, 0, 1, true);
        expected = oneByOne(view, side);
        OptionalInt found =
            trip.look(view).map(s -> OptionalInt.of(s.sample())).orElse(OptionalInt.empty());
        assertEquals(expected, found, "round " + round + ", frame " + first);
        tripped += expected.isPresent() ? 1 : 0;
      }
    }
    assertTrue(tripped > 200 && tripped < 1800, tripped + " of 2000 trip: both are tried");
  }

  private static short[] codes(Random random) {
    short[] codes = new short[5];
    int level = random.nextInt(50_000) - 25_000;
    for (int i = 0; i < codes.length; i++) {
      int what = random.nextInt(12);
      codes[i] =
          what == 0
              ? Short.MAX_VALUE
              : what == 1 ? Short.MIN_VALUE : (short) (level + random.nextInt(400));
    }
    return codes;
  }
}
