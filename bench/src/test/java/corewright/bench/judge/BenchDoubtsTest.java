package corewright.bench.judge;

import static corewright.bench.judge.Invented.hold;
import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.record.RunEnd;
import corewright.bench.record.Verdict;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What no unit can do. A resistor draws as its voltage (Ohm's law): 10 % too high an output takes
 * 10 % more through a bank of resistors, and is the unit's, as 80 % of the output takes 80 % of
 * full load, which stays full load; a load that draws more from an output that is right is the
 * bench's.
 */
class BenchDoubtsTest {
  private static final Limit HIGH =
      new Limit(
          "output-high", Quantity.OUTPUT, Limit.Side.AT_MOST, 49.5, 50.5, 0, 9, false, "invented");

  /** An amplifier at its end reads one level; a unit that gives way under load never does. */
  @ParameterizedTest
  @CsvSource({"0, 40.95, VOID", "0.02, 40.95, FAIL", "0, 40.90, FAIL"})
  void anOutputThatReadsTheSameAtEveryLoadIsAtTheEndOfItsRange(
      double ripple_V, double loaded_V, Verdict verdict) {
    Reading ripple = Reading.of(ripple_V, 0.001, Unit.VOLT);
    Profile profile = Invented.profile(Profile.Purpose.ARRIVAL, Invented.OUTPUT_FULL);
    assertEquals(
        Optional.of(verdict),
        Judge.judge(
                Invented.run(
                    hold(0, 40.95, 12.5).with(Quantity.RIPPLE_PEAK_TO_PEAK, ripple),
                    hold(3, loaded_V, 12.4).with(Quantity.RIPPLE_PEAK_TO_PEAK, ripple)),
                Invented.family(),
                profile,
                RunEnd.completed(8))
            .verdict());
  }

  @ParameterizedTest
  @CsvSource({
    "3.0, 47.8, PASS",
    "3.3, 47.8, VOID",
    "3.3, 52.8, FAIL",
    "3.6, 52.8, VOID",
    "2.69, 43.0, FAIL",
    "2.4, 38.4, FAIL",
    "3.0, -47.8, VOID",
  })
  void aLoadThatDrawsMoreIsTheBenchsUnlessTheOutputIsHigh(
      double load_A, double output_V, Verdict verdict) {
    Profile profile = Invented.profile(Profile.Purpose.ARRIVAL, Invented.OUTPUT_FULL, HIGH);
    assertEquals(
        Optional.of(verdict),
        Judge.judge(
                Invented.run(hold(0, 48, 12.5), hold(load_A, output_V, 12.4)),
                Invented.family(),
                profile,
                RunEnd.completed(8))
            .verdict());
  }
}
