package corewright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SectionTest {
  private static final Section FILE =
      Section.of(
          JsonFile.of(
              Texts.file(
                  """
                  { "n": 2.5, "t": "word", "f": true, "i": 7,
                    "list": ["a", "b"],
                    "of": [ { "x": 1 },
                            { "x": "one" } ]
                  }
                  """)));

  @Test
  void readsWhatIsThere() {
    assertEquals(2.5, FILE.number("n"));
    assertEquals("word", FILE.text("t"));
    assertTrue(FILE.flag("f", false));
    assertEquals(7, FILE.whole("i"));
    assertEquals(List.of("a", "b"), FILE.texts("list"));
    assertEquals(List.of("n", "t", "f", "i", "list", "of"), FILE.keys());
    assertEquals(1, FILE.each("of").get(0).number("x"));
  }

  @Test
  void whatIsMissingOrOfAnotherTypeReadsAsNothing() {
    assertTrue(Double.isNaN(FILE.number("t")));
    assertTrue(Double.isNaN(FILE.number("none")));
    assertTrue(Double.isNaN(FILE.at("none").at("below").number("x")));
    assertTrue(Double.isNaN(FILE.each("of").get(1).number("x")));
    assertEquals(3, FILE.number("none", 3));
    assertEquals("", FILE.text("n"));
    assertEquals(Optional.empty(), FILE.optional("none"));
    assertEquals(List.of(), FILE.texts("none"));
    assertEquals(List.of(), FILE.each("none"));
    assertTrue(FILE.flag("none", true));
  }

  @Test
  void aMistakeHasTheLineOfItsPlace() {
    assertEquals(4, FILE.each("of").get(1).mistake("x", "", "").line());
    assertEquals("/of/1/x", FILE.each("of").get(1).mistake("x", "", "").where());
    assertEquals(4, FILE.each("of").get(1).mistake("", "", "").line());
    assertEquals("/list/1", FILE.mistake("list", 1, "", "").where());
    assertEquals(2, FILE.mistake("list", 1, "", "").line());
  }

  @Test
  void showsNumbersAsAFileHasThem() {
    assertEquals("45.6", Section.shown(48 * 0.95));
    assertEquals("250000", Section.shown(2.5e5));
    assertEquals("0.0001", Section.shown(1e-4));
    assertEquals("-6", Section.shown(-6.0));
    assertEquals("NaN", Section.shown(Double.NaN));
  }
}
