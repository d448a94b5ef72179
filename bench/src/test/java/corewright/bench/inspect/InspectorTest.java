package corewright.bench.inspect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.identify.Identifier;
import corewright.bench.record.CueAnswer;
import corewright.profiles.Catalogue;
import corewright.profiles.CheckItem;
import corewright.profiles.Family;
import corewright.profiles.Grade;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InspectorTest {
  private static final Family FAMILY = Catalogue.ofHome().family("sd48");

  @Test
  void whatWasNotAnsweredIsSaid() {
    Inspection nothing = inspect();
    assertEquals(Optional.empty(), nothing.grade());
    assertEquals("Not graded: nothing was answered.", nothing.gradeWords());
    assertTrue(nothing.open().containsAll(List.of("arrival", "moisture", "mass")));
    assertFalse(inspect("moisture", "dry").open().contains("moisture"));
    assertTrue(inspect("moisture", "not seen").open().contains("moisture"));
  }

  @Test
  void onlyWhatEarlierAnswersMakeWorthAskingIsAsked() {
    assertFalse(inspect("outside", "sound").open().contains("halves"));
    assertTrue(inspect("outside", "opened before").open().contains("halves"));
    assertFalse(inspect("inside", "not opened").open().contains("solder"));
    assertTrue(inspect("inside", "opened").open().contains("solder"));
  }

  /** Grades of condition, common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "outside, sound, A",
    "outside, dented or dirty, B",
    "outside, opened before, C",
    "outside, burnt or cracked open, D",
    "moisture, wet, D",
    "filling, dug out, D",
    "shroud, broken, D",
    "pieces, empty case or another part, X"
  })
  void theGradeIsTheWorstThatAnAnswerAllows(String line, String answer, Grade grade) {
    assertEquals(Optional.of(grade), inspect(line, answer).grade());
    Grade worse = grade.worseThan(Grade.B) ? grade : Grade.B;
    assertEquals(Optional.of(worse), inspect(line, answer, "seals", "one missing or torn").grade());
  }

  @Test
  void aLineIsAsBadAsItsWorstPin() {
    Inspection seen =
        inspect("pins", "green or black", "pins/3", "bent", "pins/5", "green or black");
    assertEquals(List.of("pins: bent"), seen.blocking());
    assertEquals(List.of("pins: bent"), seen.because());
    assertEquals(2, seen.lines().get(0).pins().size());
    assertTrue(inspect("pins", "bent").open().contains("pins, by pin"));
    assertEquals(
        List.of("pins: burnt"),
        inspect("pins", "straight and bright", "pins/3", "burnt").blocking());
  }

  /** Every line of every family: what forbids power in the file forbids it here, nothing else. */
  @ParameterizedTest
  @ValueSource(strings = {"sd48", "ie110", "pv65"})
  void whatTheFileForbidsIsForbidden(String id) {
    Family family = Catalogue.ofHome().family(id);
    for (CheckItem item : family.checklist()) {
      for (String answer : item.answers()) {
        List<CueAnswer> said = List.of(answer(item.id(), answer));
        assertEquals(
            item.blocks().contains(answer) ? List.of(item.id() + ": " + answer) : List.of(),
            Inspector.of(family, said, Optional.empty()).blocking());
      }
    }
  }

  /**
   * By hand: A2 weighs 485 g, 12 g from unit to unit, the scale is good to 5 g: U of the difference
   * is √(5² + 24²) = 24.5 g. 505 g is within it; 520 g is 35 g and 7 % over.
   */
  @Test
  void theMassIsHeldAgainstTheBuildWithBothUncertainties() {
    assertFalse(mass("505 g").differs());
    MassCheck heavy = mass("520");
    assertTrue(heavy.differs());
    assertEquals(Math.sqrt(601), heavy.differenceU_g(), 1e-12);
    assertEquals(
        "520 ± 5 g against 485 ± 24 g for A2: 35 ± 25 g too heavy. Water, mud, a bracket, another"
            + " filling, or another build.",
        heavy.words());
    assertTrue(mass("440").words().contains("too light"));
  }

  @Test
  void withoutAKnownBuildNoMassIsExpected() {
    List<CueAnswer> only =
        List.of(new CueAnswer("mass", "not seen", "I", Instant.EPOCH, "520", ""));
    assertEquals(
        Optional.empty(),
        Inspector.of(FAMILY, only, Optional.of(Identifier.identify(FAMILY, only))).mass());
  }

  private static MassCheck mass(String read) {
    List<CueAnswer> answers = new ArrayList<>();
    Map.of("bosses", "6", "connector", "2-row grey", "potting", "soft gel", "partNumber", "SD48-20")
        .forEach((id, answer) -> answers.add(answer(id, answer)));
    answers.add(new CueAnswer("mass", "not seen", "I. Marsh", Instant.EPOCH, read, ""));
    return Inspector.of(FAMILY, answers, Optional.of(Identifier.identify(FAMILY, answers)))
        .mass()
        .orElseThrow();
  }

  private static Inspection inspect(String... pairs) {
    List<CueAnswer> answers = new ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      answers.add(answer(pairs[i], pairs[i + 1]));
    }
    return Inspector.of(FAMILY, answers, Optional.empty());
  }

  private static CueAnswer answer(String id, String answer) {
    return new CueAnswer(id, answer, "I. Marsh", Instant.EPOCH);
  }
}
