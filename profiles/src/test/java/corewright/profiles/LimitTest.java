package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Quantity;
import corewright.profiles.Limit.Edge;
import corewright.profiles.Limit.Side;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LimitTest {
  private static final Optional<Double> FIRST = Optional.empty();

  private static Limit limit(double from_A, double to_A, double fromHold_s, Optional<Edge> edge) {
    return new Limit(
        "x", Quantity.UNDERSHOOT, Side.AT_MOST, 0.5, 0.6, from_A, to_A, fromHold_s, edge, true, "");
  }

  @Test
  void appliesToItsRangeOfLoadsWithBothEnds() {
    Limit part = limit(0.5, 2, 0, Optional.empty());
    assertFalse(part.appliesTo(0.499));
    assertTrue(part.appliesTo(0.5));
    assertTrue(part.appliesTo(2));
    assertFalse(part.appliesTo(2.001));
  }

  @Test
  void aShortHoldIsNotAsked() {
    Limit drift = limit(1, 9, 1.5, Optional.empty());
    assertEquals(Optional.empty(), drift.at(FIRST, 2, 1.4));
    assertEquals(Optional.of(drift), drift.at(FIRST, 2, 1.5));
  }

  @Test
  void afterALoadStepTheLimitGrowsWithTheStep() {
    Limit step = limit(0, 9, 0, Optional.of(new Edge(0.5, 3, 0.8)));
    Limit at = step.at(Optional.of(1.0), 3.0, 1).orElseThrow();
    assertEquals(1.0, at.pass());
    assertEquals(1.2, at.fail(), 1e-12);
    assertEquals(step.id(), at.id());
  }

  @Test
  void otherStepsAreNotAsked() {
    Limit step = limit(0, 9, 0, Optional.of(new Edge(0.5, 3, 0.8)));
    assertEquals(Optional.empty(), step.at(FIRST, 3, 1), "no step before the first hold");
    assertEquals(Optional.empty(), step.at(Optional.of(0.4), 3, 1), "begins too low");
    assertEquals(Optional.empty(), step.at(Optional.of(2.5), 3, 1), "too small");
    assertEquals(Optional.empty(), step.at(Optional.of(3.0), 1, 1), "a release");
    Limit fromRest = limit(0, 9, 0, Optional.of(new Edge(0, 0.05, 0.4)));
    assertTrue(fromRest.at(Optional.of(0.0), 0.5, 1).isPresent());
  }
}
