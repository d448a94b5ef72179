package corewright.bench.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.bench.record.Identification.Band;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import corewright.profiles.Variant.Serviceable;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A rule of thumb of the trade as a key: seven fasteners, not rebuildable; four of them in line,
 * rebuildable. Common practice, no source. The keys of the families count bosses instead, since
 * screws get lost.
 */
class FastenersTest {

  @Test
  void sevenFastenersCannotBeRebuilt() {
    Identification seen = identify(answer("fasteners", "7"));
    assertEquals(Serviceable.NO, family().variant(seen.variant()).orElseThrow().serviceable());
    assertEquals(Band.IDENTIFIED, seen.band());
  }

  @Test
  void fourInLineCanBeRebuilt() {
    Identification seen = identify(answer("fasteners", "4"), answer("stand", "in line"));
    assertEquals(Serviceable.YES, family().variant(seen.variant()).orElseThrow().serviceable());
    assertEquals(Band.IDENTIFIED, seen.band());
  }

  /** Four that do not stand in line are not the build that can be rebuilt: nobody may open it. */
  @Test
  void fourThatAreStaggeredAreNoSuchBuild() {
    Identification seen = identify(answer("fasteners", "4"), answer("stand", "staggered"));
    assertNotEquals(Band.IDENTIFIED, seen.band());
    assertTrue(
        seen.conflicts().get(0).contains("'stand' was read as staggered"),
        seen.conflicts().toString());
  }

  /** Seven is seven, however they stand; and without a count nothing is said. */
  @Test
  void theCountDecidesAndAMissingCountDoesNot() {
    Identification seven = identify(answer("fasteners", "7"), answer("stand", "in line"));
    assertEquals("SEVEN", seven.variant());
    assertNotEquals(Band.IDENTIFIED, identify().band());
  }

  private static Identification identify(CueAnswer... answers) {
    return Identifier.identify(family(), List.of(answers));
  }

  private static CueAnswer answer(String cue, String answer) {
    return new CueAnswer(cue, answer, "test", Instant.EPOCH);
  }

  private static Family family() {
    try {
      return Catalogue.ofHome()
          .readFamily(Path.of(FastenersTest.class.getResource("fasteners.json").toURI()));
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
