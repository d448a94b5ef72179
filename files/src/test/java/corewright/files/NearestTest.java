package corewright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
  /** The usual textbook pairs, counted by hand. */
  @ParameterizedTest
  @CsvSource({"kitten,sitting,3", "flaw,lawn,2", "ca,ac,1", "hold_s,hold_s,0", "'',abc,3", "A,a,0"})
  void countsTypingMistakes(String a, String b, int expected) {
    assertEquals(expected, Nearest.distance(a, b));
    assertEquals(expected, Nearest.distance(b, a));
  }

  @Test
  void guessesOnlyWhatIsNear() {
    List<String> known = List.of("hold_s", "settle_s", "load_A");
    assertEquals(Optional.of("settle_s"), Nearest.to("setle_s", known));
    assertEquals(Optional.of("load_A"), Nearest.to("laod_A", known));
    assertEquals(Optional.empty(), Nearest.to("voltage", known));
    assertEquals(Optional.empty(), Nearest.to("x", List.of()));
  }
}
