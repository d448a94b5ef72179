package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import org.junit.jupiter.api.Test;

/** What a slow recorder says of fast things, and that it keeps what it can tell. */
class TooSlowTest {
  private static final Measurement READ = new Measurement(0.03, 0.001, Unit.VOLT);

  @Test
  void theRateIsSaidAsItIs() {
    assertEquals(
        "not measurable at 0.2 samples a second: it is over between two of them, and 100 are needed"
            + " at least",
        ((Reading.NotMeasured) struck(0.2).all().get(Quantity.RIPPLE_RMS)).reason());
    assertTrue(struck(0.2).measured(Quantity.OUTPUT).isPresent());
    assertTrue(struck(100).measured(Quantity.RIPPLE_RMS).isPresent());
  }

  private static Readings struck(double rate_Hz) {
    Readings readings = new Readings();
    readings.put(Quantity.RIPPLE_RMS, READ);
    readings.put(Quantity.OUTPUT, READ);
    TooSlow.strike(rate_Hz, readings);
    return readings;
  }
}
