package corewright.measures.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.ChannelDoubt;
import corewright.measures.HoldBudget;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.MeterSettings;
import corewright.measures.uncertainty.BudgetText;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A budget is the reading it explains: the same value, the same uncertainty. */
class BudgetOfTest {
  @ParameterizedTest
  @ValueSource(strings = {"healthy_sw", "healthy_avg_noisy12"})
  void everyBudgetComesToItsReading(String name) {
    RecordedCapture record = RecordedCapture.of(name);
    MeterSettings settings =
        new MeterSettings(
            Optional.of(record.truth.get("settle_s").asDouble()),
            Optional.of(record.truth.get("guard_s").asDouble()),
            Optional.of(48.0),
            Map.of(
                "output", new ChannelDoubt(0.0005, 0.012),
                "input", new ChannelDoubt(0.0005, 0.004),
                "load", new ChannelDoubt(0.002, 0.003)));
    MeasuredRun run = RunMeter.read(record.capture, settings);
    List<HoldBudget> budgets = RunMeter.budgets(record.capture, settings);
    assertEquals(7 * 4 - 1, budgets.size());
    for (HoldBudget b : budgets) {
      Measurement read = run.holds().get(b.hold()).value(b.quantity()).orElseThrow();
      Measurement made = b.budget().result();
      assertEquals(read.value(), made.value(), 1e-12 + 1e-12 * Math.abs(read.value()));
      assertEquals(read.u(), made.u(), 1e-9 * read.u(), b.hold() + " " + b.quantity());
      double k = b.budget().coverageFactor(0.95);
      assertTrue(k >= 1.9599, b.budget().effectiveFreedom() + " degrees, k " + k);
      List<String> lines = BudgetText.lines(b.budget(), 0.95);
      assertTrue(lines.stream().anyMatch(l -> l.startsWith("gain")), lines.toString());
    }
  }
}
