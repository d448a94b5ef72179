package corewright.bench.commission;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.commission.WiringFinding.Kind;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A ratio needs something beneath its line. */
class ScaleTest {
  @Test
  void aSourceThatGivesNothingIsNothingToHoldAChannelAgainst() {
    for (double read_V : new double[] {0, 0.001, 10}) {
      WiringFinding found = Scale.of("output", volts(read_V, 0), volts(0, 0), "its leads");
      assertEquals(Kind.IN_DOUBT, found.kind());
      assertEquals(Optional.empty(), found.ratio());
      assertTrue(found.saw().endsWith("that is nothing to hold it against."), found.saw());
    }
    assertEquals(
        Kind.RIGHT, Scale.of("output", volts(10, 0.01), volts(10, 0.01), "its leads").kind());
  }

  private static Measurement volts(double value, double u) {
    return new Measurement(value, u, Unit.VOLT);
  }
}
