package corewright.bench.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Diagnosis;
import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.measures.MeasuredRun;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A unit that the small current limit refused is not short for that alone. By hand: 0.5 A through a
 * diode leave some 0.6 V at the input above a shorted output, and nothing above a shorted input; 48
 * V over 2 A are 24 Ω, so that 100 Ω are a leak; what stands above its input is converted.
 */
class RefusedPowerUpTest {
  private final Catalogue catalogue = Catalogue.ofHome();
  private final Family family = catalogue.family("sd48");

  @ParameterizedTest
  @CsvSource({
    // dead input, dead output (ohm), input, output (V) behind the limit; NaN: not read
    "2, NaN, NaN, NaN, INPUT_SHORT",
    "9000, 0.3, NaN, NaN, OUTPUT_SHORT",
    "9000, 6500, 0.05, 0.00, INPUT_SHORT",
    "NaN, NaN, 0.05, 0.00, INPUT_SHORT",
    "NaN, NaN, 0.66, 0.02, OUTPUT_SHORT",
    "9000, 100, NaN, NaN, OUTPUT_LEAKAGE",
    "9000, 6500, 8.10, 42.3, POWER_STAGE_LOSSY",
  })
  void theReadingsBeforeTheFirstHoldTellWhereTheCurrentGoes(
      double deadInput, double deadOutput, double input_V, double output_V, String group) {
    Diagnosis diagnosis = diagnose(run(deadInput, deadOutput, input_V, output_V));
    assertEquals(group, diagnosis.candidates().get(0).group(), diagnosis.candidates().toString());
  }

  @Test
  void withoutAReadingNoneOfThemIsNamedAndTheEmptyFixtureComesNext() {
    Diagnosis diagnosis = diagnose(run(Double.NaN, Double.NaN, Double.NaN, Double.NaN));
    assertEquals(Optional.empty(), diagnosis.named());
    List<String> offered = diagnosis.candidates().stream().map(c -> c.group()).toList();
    assertTrue(
        offered.contains("INPUT_SHORT") && offered.contains("OUTPUT_SHORT"), offered.toString());
    assertTrue(diagnosis.next().orElse("").contains("empty fixture"), diagnosis.toString());
    assertTrue(
        diagnosis.excluded().stream().anyMatch(e -> e.contains("fixture is not excluded")),
        "supply and fixture come before the unit");
  }

  private Diagnosis diagnose(MeasuredRun run) {
    Judgement refused =
        new Judgement(
            Optional.of(Verdict.UNSAFE),
            Optional.empty(),
            "",
            List.of(),
            List.of("The unit still takes the whole 0.50 A."));
    return Diagnostician.diagnose(run, family, catalogue.profile("sd48-arrival"), refused);
  }

  private static MeasuredRun run(
      double deadInput, double deadOutput, double input_V, double output_V) {
    Map<Quantity, Reading> readings = new EnumMap<>(Quantity.class);
    read(readings, Quantity.DEAD_INPUT, deadInput, Unit.OHM);
    read(readings, Quantity.DEAD_OUTPUT, deadOutput, Unit.OHM);
    read(readings, Quantity.FIRST_POWER_INPUT, input_V, Unit.VOLT);
    read(readings, Quantity.FIRST_POWER_OUTPUT, output_V, Unit.VOLT);
    return new MeasuredRun(1000, 0, "", List.of(), readings, List.of());
  }

  private static void read(Map<Quantity, Reading> to, Quantity what, double value, Unit unit) {
    if (!Double.isNaN(value)) {
      to.put(what, Reading.of(value, 0.01, unit));
    }
  }
}
