package corewright.bench.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.ClaimFacts.Cause;
import corewright.bench.life.ClaimFacts.Coverage;
import corewright.bench.life.ClaimFacts.Group;
import corewright.bench.life.ClaimFacts.Identity;
import corewright.bench.life.ClaimFacts.Returned;
import corewright.bench.life.ClaimFacts.Seal;
import corewright.bench.life.ClaimFacts.Term;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClaimsTest {
  /** Rows of the trade's table of claims (common practice, no source), and every open question. */
  @ParameterizedTest
  @CsvSource({
    "C10, , UNKNOWN,  IN,      INTACT,  NONE,     FAIL,    COMPLETE, SAME",
    "C11, W6, NOT_OURS, OUT,    BROKEN,  UNKNOWN,  UNKNOWN, UNKNOWN,  UNKNOWN",
    "C20, , OURS,     UNKNOWN, INTACT,  NONE,     FAIL,    COMPLETE, SAME",
    "C21, W7, OURS,   OUT,     INTACT,  NONE,     FAIL,    COMPLETE, SAME",
    "C30, , OURS,     IN,      UNKNOWN, NONE,     FAIL,    COMPLETE, SAME",
    "C31, , OURS,     IN,      BROKEN,  EXTERNAL, UNKNOWN, UNKNOWN,  UNKNOWN",
    "C32, W5, OURS,   IN,      BROKEN,  EXTERNAL, FAIL,    UNKNOWN,  UNKNOWN",
    "C40, , OURS,     IN,      INTACT,  NONE,     PASS,    AMBIENT,  UNKNOWN",
    "C41, W4, OURS,   IN,      INTACT,  UNKNOWN,  PASS,    COMPLETE, UNKNOWN",
    "C50, , OURS,     IN,      INTACT,  UNKNOWN,  FAIL,    AMBIENT,  SAME",
    "C51, W3, OURS,   IN,      INTACT,  EXTERNAL, FAIL,    AMBIENT,  SAME",
    "C60, , OURS,     IN,      INTACT,  NONE,     FAIL,    AMBIENT,  UNKNOWN",
    "C61, W1, OURS,   IN,      INTACT,  NONE,     FAIL,    AMBIENT,  SAME",
    "C62, W2, OURS,   IN,      INTACT,  NONE,     FAIL,    AMBIENT,  OTHER"
  })
  void eachRowDecidesItsOwnCase(
      String row,
      ClaimClass claim,
      Identity identity,
      Term term,
      Seal seal,
      Cause cause,
      Returned returned,
      Coverage coverage,
      Group group) {
    Claims.Row decided =
        Claims.decide(new ClaimFacts(identity, term, seal, cause, returned, coverage, group));
    assertEquals(row, decided.id());
    assertEquals(claim, decided.claim().orElse(null));
  }

  @Test
  void everyCombinationHitsARowAndEveryRowIsHit() {
    Set<String> hit = all().stream().map(f -> Claims.decide(f).id()).collect(Collectors.toSet());
    assertEquals(Claims.TABLE.stream().map(Claims.Row::id).collect(Collectors.toSet()), hit);
  }

  @Test
  void nothingIsAcceptedOrFoundFaultlessWithoutATestAsReturnedAndAnIntactSeal() {
    for (ClaimFacts facts : all()) {
      Claims.decide(facts)
          .claim()
          .filter(c -> Set.of(ClaimClass.W1, ClaimClass.W2, ClaimClass.W4).contains(c))
          .ifPresent(
              c ->
                  assertTrue(
                      facts.returned() != Returned.UNKNOWN
                          && facts.seal() == Seal.INTACT
                          && facts.term() == Term.IN
                          && facts.identity() == Identity.OURS,
                      facts.toString()));
    }
  }

  private static List<ClaimFacts> all() {
    List<ClaimFacts> all = new ArrayList<>();
    for (Identity i : Identity.values()) {
      for (Term t : Term.values()) {
        for (Seal s : Seal.values()) {
          for (Cause c : Cause.values()) {
            for (Returned r : Returned.values()) {
              for (Coverage v : Coverage.values()) {
                for (Group g : Group.values()) {
                  all.add(new ClaimFacts(i, t, s, c, r, v, g));
                }
              }
            }
          }
        }
      }
    }
    return all;
  }
}
