package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import corewright.bench.port.Digitizer;
import corewright.bench.record.RunEnd;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.profiles.Step;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever a bench lacks: each kind of step is done, or said to be open, and never passed over. */
class EveryKindIsSaidTest {
  @TempDir Path folder;
  private final FakeBench bench = new FakeBench();

  private static List<Step> steps() {
    List<Step> steps = new ArrayList<>(List.of(Plans.DEAD, Plans.FIRST));
    steps.add(ByHandStepTest.step(false));
    steps.addAll(StepsOfTheTradeTest.EVERY);
    steps.add(Plans.AWAY);
    return steps;
  }

  @Test
  void everyKindIsAmongThem() {
    assertEquals(
        EnumSet.allOf(Step.Kind.class),
        steps().stream().map(Step::kind).collect(Collectors.toSet()));
  }

  /** The holds of the profile take 1000 samples a second; what has a rate of its own takes more. */
  @ParameterizedTest
  @CsvSource({"250000, true, true, 3", "1000, false, false, 12"})
  void itIsDoneOrSaidToBeOpen(int most_Hz, boolean pulses, boolean aids, int open) {
    bench.most_Hz = most_Hz;
    bench.pulses = pulses;
    bench.hasMeter = aids;
    bench.hasThermometer = aids;
    Set<String> sampled = new HashSet<>();
    RunListener listener =
        new RunListener() {
          private String in = "";

          @Override
          public void step(Step step, int index, int count) {
            in = step.id();
          }

          @Override
          public void frame(Digitizer.Frame frame) {
            sampled.add(in);
          }
        };
    RunResult result =
        new RunEngine(bench.clock)
            .run(
                Plans.plan(folder, Plans.profile("sd48", 1000, steps())),
                bench.instruments(),
                listener,
                new Stop());
    assertEquals(RunEnd.Kind.COMPLETED, result.end().kind(), result.end().saw());
    int left = 0;
    for (Step step : steps()) {
      boolean said =
          result.beside().notes().stream()
              .anyMatch(n -> n.startsWith("Not measured: " + step.title() + ". "));
      assertEquals(!said, sampled.contains(step.id()), step + ": " + result.beside().notes());
      left += said ? 1 : 0;
      Set<Quantity> wanted = EnumSet.noneOf(Quantity.class);
      wanted.addAll(step.yields());
      step.byHand().ifPresent(wanted::add);
      wanted.forEach(q -> stands(result.beside().readings().get(q), q, said));
    }
    assertEquals(open, left, result.beside().notes().toString());
  }

  private static void stands(Reading reading, Quantity quantity, boolean open) {
    assertNotNull(reading, quantity.toString());
    if (reading instanceof Reading.NotMeasured none) {
      assertFalse(none.reason().isBlank(), quantity.toString());
    }
    assertEquals(
        open,
        reading.toString().contains("and nobody entered it"),
        () -> quantity + ": " + reading);
  }
}
