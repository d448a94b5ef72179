package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Capture;
import corewright.measures.MeterSettings;
import corewright.measures.Synthetic;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/** White noise of deviation σ has density σ·√(2/rate) in every bin, as nearly as is stated. */
class HoldSpectrumTest {
  private static final double RATE = 10e3;
  private static final double SIGMA = 0.01;

  @Test
  void binsScatterAsIsStated() {
    Capture capture =
        Synthetic.capture(
            RATE,
            4,
            Synthetic.exactly(1),
            new Synthetic.Signal(t -> 48, SIGMA, 1e-4),
            Synthetic.exactly(12),
            5);
    MeterSettings settings =
        new MeterSettings(Optional.of(0.1), Optional.of(0.0), Optional.of(48.0), Map.of());
    List<HoldSpectrum> spectra = HoldSpectrum.of(capture, RunMeter.read(capture, settings));
    assertEquals(1, spectra.size());
    HoldSpectrum one = spectra.get(0);
    SummaryStatistics density = new SummaryStatistics();
    for (int bin = 4; bin < one.noise().size() - 4; bin++) {
      density.addValue(one.noise().density(bin) / (SIGMA * Math.sqrt(2 / RATE)));
    }
    assertTrue(one.noise().segments() >= 7);
    assertEquals(1, density.getMean(), 0.02); // the root of a mean is 1/8k below it
    assertEquals(one.densityU_rel(), density.getStandardDeviation(), 0.07 * one.densityU_rel());
  }
}
