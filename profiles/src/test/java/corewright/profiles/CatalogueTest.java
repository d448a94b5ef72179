package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.measures.Quantity;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The families that come with the program. */
class CatalogueTest {
  private static final Catalogue CATALOGUE = Catalogue.ofHome();

  @Test
  void everyFileThatComesWithTheProgramIsGood() {
    assertEquals(List.of("ie110", "pv65", "ref48", "sd48"), CATALOGUE.familyIds());
    int profiles = 0;
    for (String id : CATALOGUE.familyIds()) {
      Family family = CATALOGUE.family(id);
      assertEquals(id, family.id());
      for (String profile : CATALOGUE.profileIds(id)) {
        assertEquals(profile, CATALOGUE.profile(profile).id());
        profiles++;
      }
      assertEquals(family.defaultProfile(), CATALOGUE.defaultProfile(family).id());
    }
    assertEquals(15, profiles);
  }

  @Test
  void noCoreIsReceivedAsAFamilyOfTheTests() {
    assertEquals(
        List.of("ie110", "pv65", "sd48"), CATALOGUE.families().stream().map(Family::id).toList());
    assertTrue(CATALOGUE.family("ref48").testOnly());
  }

  @Test
  void carriesTheNumbersOfTheFile() {
    Family family = CATALOGUE.family("sd48");
    assertEquals(48, family.output_V());
    assertEquals(0.002, family.capacitance_F());
    assertEquals(new InputZones(10, 9), family.zones());
    assertEquals(new AbortLimits(56, 30, 0.5, 18, 0.01, 90), family.abort());
    assertEquals(new Discharge(470, 10, 5, 4.2), family.discharge());
    assertEquals(Variant.Serviceable.NO, family.variant("A3").orElseThrow().serviceable());
    assertFalse(family.needsSecondPerson());
    assertTrue(CATALOGUE.family("ie110").needsSecondPerson());
    assertEquals(0.88, family.economics().yield());

    Profile profile = CATALOGUE.profile("sd48-arrival");
    assertEquals(Profile.Purpose.ARRIVAL, profile.purpose());
    assertEquals(List.of(new SupplyFeed("input", new InputZones(10, 9))), profile.feeds());
    assertEquals(Optional.of(0.15), profile.settle_s());
    assertEquals(
        new Step("full", Step.Kind.HOLD, "Full load", 12.5, 20, 2.0, 2.2, true),
        profile.steps().get(6));
    Limit headline = profile.limits().stream().filter(Limit::headline).findFirst().orElseThrow();
    assertEquals(Quantity.OUTPUT, headline.quantity());
    assertEquals(Limit.Side.AT_LEAST, headline.side());
    assertEquals(46.5, headline.pass());
    assertEquals(45.0, headline.fail());
    assertEquals(Double.POSITIVE_INFINITY, headline.to_A());
  }

  @Test
  void aCueThatIsANumberFindsItsAnswer() {
    Family family = CATALOGUE.family("sd48");
    Scale mass =
        family.cues().stream()
            .filter(c -> c.id().equals("mass"))
            .findFirst()
            .flatMap(Cue::scale)
            .orElseThrow();
    assertEquals("g", mass.unit());
    assertEquals(Optional.of("under 430 g"), mass.answer(429.9));
    assertEquals(Optional.of("430 to 540 g"), mass.answer(430));
    assertEquals(Optional.empty(), mass.answer(5));
  }

  /** Budgets: a run of 6 to 8 s, and under 20 MB of four channels with two bytes a sample. */
  @ParameterizedTest
  @ValueSource(strings = {"sd48", "ie110", "pv65"})
  void anArrivalRunIsShortAndItsCaptureSmall(String id) {
    Profile profile = CATALOGUE.profile(id + "-arrival");
    double held_s = profile.steps().stream().mapToDouble(Step::hold_s).sum() - 2.0;
    assertTrue(held_s > 5.5 && held_s < 8, held_s + " s");
    assertTrue(held_s * profile.sampleRate_Hz() * 4 * 2 < 20e6);
    assertTrue(profile.sampleRate_Hz() > 2 * CATALOGUE.family(id).switching_Hz());
  }

  /** One build of each family is set in hard resin, and each family has a question to ask. */
  @ParameterizedTest
  @ValueSource(strings = {"sd48", "ie110", "pv65"})
  void oneBuildOfEachFamilyCannotBeRebuilt(String id) {
    Family family = CATALOGUE.family(id);
    List<Variant> none =
        family.variants().stream().filter(v -> v.serviceable() == Variant.Serviceable.NO).toList();
    assertEquals(1, none.size());
    assertEquals(List.of("hard resin"), none.get(0).expected().get("potting"));
    assertTrue(
        family.checklist().stream().filter(c -> c.askedIf().isEmpty()).count() <= 13,
        "a sound core is asked no more: the rest follows from what is remarkable");
    assertTrue(family.checklist().stream().anyMatch(c -> c.blocks().contains("wet")), "wet blocks");
  }

  @Test
  void anUnknownIdIsAnsweredWithTheNearest() {
    Mistake family = assertThrows(BadFile.class, () -> CATALOGUE.family("sd84")).mistakes().get(0);
    assertEquals("there is no family 'sd84'", family.message());
    assertEquals("Did you mean 'sd48'?", family.suggestion());
    Mistake profile =
        assertThrows(BadFile.class, () -> CATALOGUE.profile("sd48-arival")).mistakes().get(0);
    assertEquals("Did you mean 'sd48-arrival'?", profile.suggestion());
  }

  @Test
  void saysWhichFolderIsMissing() {
    Path nowhere = Path.of("no-such-folder");
    Mistake mistake = assertThrows(BadFile.class, () -> Catalogue.in(nowhere)).mistakes().get(0);
    assertEquals("no-such-folder", mistake.file());
    assertEquals("there is no such folder", mistake.message());
  }
}
