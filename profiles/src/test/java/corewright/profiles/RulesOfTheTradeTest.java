package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Facts of the trade that the files must keep whatever a shop edits. Common practice, no source.
 */
class RulesOfTheTradeTest {
  private static final Catalogue CATALOGUE = Catalogue.ofHome();

  private static List<Limit> ofFullLoad(String profileId) {
    Profile profile = CATALOGUE.profile(profileId);
    double full_A = profile.steps().stream().mapToDouble(Step::load_A).max().orElse(0);
    return profile.limits().stream()
        .filter(Limit::headline)
        .filter(l -> l.appliesTo(full_A) && l.side() == Limit.Side.AT_LEAST)
        .toList();
  }

  /** A 48 V unit that holds 47 to 48 V under load is good; at 43 V it is failing. */
  @ParameterizedTest
  @ValueSource(strings = {"sd48-arrival", "sd48-ship", "ref48-steady", "ref48-switching"})
  void fortySevenVoltsIsGoodAndFortyThreeIsFailing(String profile) {
    List<Limit> limits = ofFullLoad(profile);
    assertEquals(1, limits.size());
    Limit limit = limits.get(0);
    assertTrue(47 >= limit.pass() && 48 >= limit.pass());
    assertTrue(43 < limit.fail());
  }

  /** Input from 10 V on is a good test, 9 to 10 V is tolerated, below 9 V says nothing. */
  @ParameterizedTest
  @CsvSource({"sd48", "ref48", "pv65"})
  void tenVoltsIsGoodAndNineTolerated(String id) {
    assertEquals(new InputZones(10, 9), CATALOGUE.family(id).zones());
    for (String profile : CATALOGUE.profileIds(id)) {
      CATALOGUE
          .profile(profile)
          .feeds()
          .forEach(feed -> assertEquals(new InputZones(10, 9), feed.zones(), profile));
    }
  }
}
