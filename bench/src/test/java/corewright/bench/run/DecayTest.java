package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Digitizer;
import corewright.measures.Measurement;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The fall of an output on its discharge resistor, against closed forms and a simulated circuit.
 */
class DecayTest {
  private static final double R_OHM = 470;
  private static final double C_F = Plans.SD48.capacitance_F();
  private static final int PER_FRAME = 20;
  private static final Digitizer.Channel OUTPUT = new Digitizer.Channel("output", "V", 0.0025, 0);

  /**
   * ngspice: 2000 uF with 15 mOhm from 48 V on 470 Ohm beside a bleeder of 6.8 kOhm, with 12 V
   * through 1 kOhm feeding it; every 50 ms from 50 ms on, V.
   */
  private static final double[] FED_V = {
    44.51310, 41.30229, 38.34385, 35.61795, 33.10632, 30.79211, 28.65980, 26.69510, 24.88483,
    23.21685, 21.67998, 20.26391, 18.95914, 17.75694, 16.64923, 15.62859, 14.68818, 13.82168
  };

  /** The same without what feeds it. */
  private static final double[] FREE_V = {
    45.34504, 42.83840, 40.47032, 38.23315, 36.11964, 34.12297, 32.23667, 30.45465, 28.77114,
    27.18069, 25.67816, 24.25868, 22.91768, 21.65080, 20.45396, 19.32328, 18.25510, 17.24597
  };

  private static Decay of(DoubleUnaryOperator volts, double frame_s, int frames) {
    Decay decay = new Decay(Plans.SD48, R_OHM);
    decay.begin();
    int rate_Hz = (int) Math.round(PER_FRAME / frame_s);
    for (int f = 0; f < frames; f++) {
      short[] codes = new short[PER_FRAME];
      for (int i = 0; i < PER_FRAME; i++) {
        double t = (double) (f * PER_FRAME + i) / rate_Hz;
        codes[i] = (short) Math.round(volts.applyAsDouble(t) / OUTPUT.lsb());
      }
      Digitizer.Frame frame =
          new Digitizer.Frame(
              (long) f * PER_FRAME,
              new Digitizer.Status(true, false, true, false, false, false),
              new short[][] {codes},
              0);
      decay.add(new FrameView(frame, List.of(OUTPUT), (long) f * PER_FRAME, rate_Hz, 0, 0, false));
    }
    return decay;
  }

  /** V = V0·e^(−t/RC): C is told, and more than twice the time that it should take is refused. */
  @ParameterizedTest
  @CsvSource({"1.0, false", "0.5, false", "1.95, false", "2.1, true"})
  void aCapacitorOnItsResistorIsTold(double times, boolean tooSlow) {
    double tau_s = times * R_OHM * C_F;
    Decay decay = of(t -> 48 * Math.exp(-t / tau_s), 0.02, 120);
    Measurement c = decay.capacitance().measurement().orElseThrow();
    assertEquals(times * C_F, c.value(), 1e-3 * c.value(), "F: τ/R");
    assertEquals(tooSlow, decay.tooSlow().isPresent());
    assertEquals(Optional.empty(), decay.fed());
  }

  /** A source behind a resistor makes an end of its own: V·R/(R + R2). */
  @ParameterizedTest
  @CsvSource({"0.8, false", "1.2, true", "3.0, true", "20, true"})
  void whatDoesNotFallTowardsNothingIsFed(double end_V, boolean fed) {
    Decay decay = of(t -> end_V + (48 - end_V) * Math.exp(-t / (R_OHM * C_F)), 0.02, 120);
    assertEquals(fed, decay.fed().isPresent(), decay.fed().toString());
  }

  /** Parallel resistances: 439.6 Ohm with the bleeder, 305.4 with the source; 12 V come to 3.66. */
  @Test
  void theSimulatedCircuitIsReadAsWhatItIs() {
    Decay free = of(at(FREE_V), 0.05, FREE_V.length);
    Measurement c = free.capacitance().measurement().orElseThrow();
    assertEquals(2000e-6 * 439.6 / R_OHM, c.value(), 0.005 * c.value(), "F, by the resistor alone");
    assertEquals(Optional.empty(), free.fed());
    String fed = of(at(FED_V), 0.05, FED_V.length).fed().orElseThrow();
    assertTrue(fed.startsWith("The output falls towards 3.6"), fed);
    assertEquals(3.664, Double.parseDouble(fed.split(" ")[4]), 0.02, fed);
  }

  /** A source that comes and goes: no capacitor does that. */
  @Test
  void aFallOnNoCurveIsNone() {
    Decay decay = of(t -> 46 * Math.exp(-t) + (t % 0.4 < 0.2 ? 4 : 0), 0.02, 60);
    String saw = decay.fed().orElseThrow();
    assertTrue(saw.startsWith("The output does not fall as a capacitor does"), saw);
  }

  /** Nothing that stands still is fitted. */
  @Test
  void whatDoesNotFallSaysNothing() {
    Decay still = of(t -> 48 - 5 * t, 0.02, 50);
    assertEquals(Optional.empty(), still.fed());
    assertEquals(Optional.empty(), of(t -> 48, 0.02, 120).tooSlow());
  }

  /** The frame's mean is the sample, wherever in the frame. */
  private static DoubleUnaryOperator at(double[] volts) {
    return t -> volts[Math.min(volts.length - 1, (int) (t / 0.05 + 1e-9))];
  }
}
