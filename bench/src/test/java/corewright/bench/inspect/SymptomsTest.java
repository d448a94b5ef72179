package corewright.bench.inspect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.inspect.Symptom.Kind;
import corewright.bench.record.CueAnswer;
import corewright.bench.record.Verdict;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SymptomsTest {
  private static final Family FAMILY = Catalogue.ofHome().family("sd48");

  /**
   * Codes on every output at once point at the module, its feed or its ground; a code on a single
   * one at that output. Common practice, no source.
   */
  @Test
  void everyOutputAtOncePointsAtWhatTheyShare() {
    Symptoms every = codes("1", "2", "3", "4", "5", "6", "7", "8");
    Symptoms one = codes("3", "3");
    assertTrue(shared(every) > 0.9, every.posterior().toString());
    assertTrue(p(every, Suspect.MODULE) > p(every, Suspect.FEED));
    assertTrue(p(one, Suspect.ONE_OUTPUT) > 0.7, one.posterior().toString());
    assertTrue(shared(one) < 0.3, one.posterior().toString());
    assertTrue(every.sentences(Optional.empty()).get(0).startsWith("Every output has a code"));
    assertTrue(one.sentences(Optional.empty()).get(0).startsWith("One output alone has a code"));
  }

  /**
   * By hand, Bayes' rule: 0.45 · 0.55 = 0.2475, 0.20 · 0.35 = 0.07, 0.08 · 0.45 = 0.036, 0.20 ·
   * 0.01 = 0.002, 0.07 · 0.05 = 0.0035; sum 0.359.
   */
  @Test
  void theProbabilityByHand() {
    Symptoms every = codes("every output");
    assertEquals(0.2475 / 0.359, p(every, Suspect.MODULE), 1e-12);
    assertEquals(0.002 / 0.359, p(every, Suspect.ONE_OUTPUT), 1e-12);
    // with a pass of the bench the module is out: 0.07 / (0.359 − 0.2475)
    assertTrue(
        every
            .sentences(Optional.of(Verdict.PASS))
            .get(1)
            .startsWith("The bench finds the unit good; what is left is its feed (0.63)"),
        every.sentences(Optional.of(Verdict.PASS)).toString());
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void theAnswersToAQuestionAreAllThatCanBeSaid(Kind kind) {
    for (Suspect suspect : Suspect.values()) {
      double sum =
          Arrays.stream(Symptom.values())
              .filter(s -> s.kind() == kind)
              .mapToDouble(s -> s.given(suspect))
              .sum();
      assertEquals(1, sum, 1e-12, kind + " " + suspect);
    }
    assertEquals(1, Arrays.stream(Suspect.values()).mapToDouble(Suspect::prior).sum(), 1e-12);
  }

  @Test
  void nothingSaidPointsNowhere() {
    Symptoms nothing = Symptoms.of(FAMILY, List.of());
    assertEquals(List.of(), nothing.sentences(Optional.of(Verdict.FAIL)));
    for (Suspect suspect : Suspect.values()) {
      assertEquals(suspect.prior(), p(nothing, suspect), 1e-12);
    }
  }

  @Test
  void whereCodesBelongMakesThePattern() {
    assertEquals(List.of(Symptom.SHARED_ONLY), codes("supply", "module").said());
    assertEquals(List.of(Symptom.SEVERAL_OUTPUTS), codes("1", "2", "supply").said());
    assertEquals(List.of(Symptom.ONE_OUTPUT), codes("1", "supply").said());
    assertEquals(List.of(Symptom.EVERY_OUTPUT), codes("every output").said());
    assertEquals("P-3", codes("3").codes().get(0).text());
  }

  private static double shared(Symptoms symptoms) {
    return p(symptoms, Suspect.MODULE) + p(symptoms, Suspect.FEED) + p(symptoms, Suspect.GROUND);
  }

  private static double p(Symptoms symptoms, Suspect suspect) {
    return symptoms.posterior().getOrDefault(suspect, 0.0);
  }

  private static Symptoms codes(String... where) {
    List<CueAnswer> answers = new ArrayList<>();
    for (String place : where) {
      answers.add(
          new CueAnswer(
              Symptoms.CODE + (answers.size() + 1),
              place,
              "I. Marsh",
              Instant.EPOCH,
              "P-" + place,
              ""));
    }
    return Symptoms.of(FAMILY, answers);
  }
}
