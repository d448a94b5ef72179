package corewright.station.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.port.Digitizer;
import corewright.bench.run.Clock;
import java.lang.reflect.Proxy;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SampleBenchTest {

  @Test
  void aTagIsAlwaysTheSameUnitAndEverySortIsMet() {
    Map<String, Long> met =
        IntStream.range(0, 600)
            .mapToObj(i -> "U-" + (10_000 + i))
            .peek(tag -> assertEquals(SampleBench.truth(tag), SampleBench.truth(tag)))
            .collect(
                Collectors.groupingBy(
                    (Function<String, String>) SampleBench::truth, Collectors.counting()));
    assertEquals(HiddenFault.values().length, met.size(), met.toString());
    // A third of 600 with a standard deviation of 12; five of them.
    assertEquals(200, met.get(HiddenFault.NONE.words()), 60);
  }

  /** 250 samples at 50 000 a second are 5 ms. */
  @Test
  void aPacedFrameComesWhenAPersonBesideTheBenchWouldHaveItAndAHaltIsNotMadeUp() {
    Waiting clock = new Waiting();
    PacedDigitizer paced = new PacedDigitizer(frames(250), clock);
    paced.start(50_000, 250);
    for (int i = 1; i <= 10; i++) {
      paced.next(Duration.ofMillis(400));
      assertEquals(i * 5_000_000L, clock.nanos);
    }
    clock.nanos += 3_000_000_000L; // the host was busy
    for (int i = 0; i < 40; i++) {
      paced.next(Duration.ofMillis(400));
    }
    long late = clock.nanos - 3_050_000_000L;
    assertEquals(200_000_000L - 105_000_000L, late, "no more than a tenth of a second is made up");
  }

  private static Digitizer frames(int samples) {
    Digitizer.Frame frame =
        new Digitizer.Frame(
            0,
            new Digitizer.Status(true, true, false, false, false, false),
            new short[1][samples],
            0);
    return (Digitizer)
        Proxy.newProxyInstance(
            Digitizer.class.getClassLoader(),
            new Class<?>[] {Digitizer.class},
            (self, method, arguments) -> method.getName().equals("next") ? frame : null);
  }

  /** Its time passes only while somebody waits. */
  private static final class Waiting implements Clock {
    private long nanos;

    @Override
    public long nanos() {
      return nanos;
    }

    @Override
    public Instant wall() {
      return Instant.EPOCH;
    }

    @Override
    public void pause(Duration time) {
      nanos += time.toNanos();
    }
  }
}
