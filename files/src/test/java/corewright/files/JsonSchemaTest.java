package corewright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonSchemaTest {
  private static final JsonSchema MENU =
      JsonSchema.resource(JsonSchemaTest.class, "menu.schema.json");

  private static final String GOOD =
      """
      {
        "name": "Noon",
        "dishes": [
          { "title": "Soup",
            "cook_s": 900,
            "heat": "low" }
        ]
      }
      """;

  private static List<Mistake> check(String text) {
    return MENU.check(JsonFile.of(Texts.file(text)));
  }

  @Test
  void findsNothingInAGoodFile() {
    assertEquals(List.of(), check(GOOD));
    assertEquals(Optional.of("menu"), MENU.title());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "name"       | "nmae"        | 2 | /nmae            | nothing here is called 'nmae'          | Did you mean 'name'?
          "cook_s"     | "cook_min"    | 5 | /dishes/0/cook_min | nothing here is called 'cook_min'    | Write 'cook_s', with the number in s
          900          | 9000          | 5 | /dishes/0/cook_s | 9000 is out of range                   | Write a number above 0 to 7200
          900          | 0             | 5 | /dishes/0/cook_s | 0 is out of range                      | Write a number above 0 to 7200
          900          | "0,5"         | 5 | /dishes/0/cook_s | "0,5" stands here, and a number is needed  | Write 0.5, without quotes
          900          | null          | 5 | /dishes/0/cook_s | null stands here, and a number is needed   | Write a number
          "low"        | "hihg"        | 6 | /dishes/0/heat   | "hihg" is not one of the words that may stand here | Did you mean "high"?
          "low"        | "scorching"   | 6 | /dishes/0/heat   | "scorching" is not one of the words that may stand here | Write one of: low, medium, high
          "cook_s": 900, |             | 4 | /dishes/0        | 'cook_s' is missing                    | Add "cook_s": how long it cooks, s
          "Noon"       | ""            | 2 | /name            | the text is empty                      | Write something
          900          | [1]           | 5 | /dishes/0/cook_s | a list stands here, and a number is needed | Write a number
          "heat"       | "portions": 1.5, "heat" | 6 | /dishes/0/portions | 1.5 stands here, and a whole number is needed | Write a whole number
          """)
  void saysWhereWhatAndWhatToDo(
      String good, String bad, int line, String where, String message, String suggestion) {
    String text = GOOD.replace(good, bad == null ? "" : bad);
    assertEquals(List.of(new Mistake("menu.json", line, where, message, suggestion)), check(text));
  }

  @Test
  void findsEveryMistakeAtOnceInTheOrderOfLines() {
    List<Mistake> mistakes =
        check(
            """
            {
              "name": "Noon",
              "dishes": [
                { "title": "Soup", "cook_s": -1, "heat": "low" },
                { "title": "Bread", "heat": "low", "colour": "brown" },
                { "title": "Tea", "cook_s": 180, "heat": 3 }
              ],
              "price": 3
            }
            """);
    assertEquals(
        List.of(
            "4 /dishes/0/cook_s",
            "5 /dishes/1",
            "5 /dishes/1/colour",
            "6 /dishes/2/heat",
            "8 /price"),
        mistakes.stream().map(m -> m.line() + " " + m.where()).sorted().toList());
    assertEquals(List.of(4, 5, 5, 6, 8), mistakes.stream().map(Mistake::line).toList(), "in order");
  }

  @Test
  void saysWhatIsKnownWhenNothingIsNear() {
    Mistake mistake =
        check(GOOD.replace("\"heat\"", "\"portions\": 2, \"colour\": 1, \"heat\"")).get(0);
    assertEquals("Known here: title, cook_s, heat, portions", mistake.suggestion());
  }

  @Test
  void pointsIntoNamesThatHoldTheSignsOfAPointer() {
    Mistake mistake = check(GOOD.replace("\"name\"", "\"a/b~c\": 1,\n  \"name\"")).get(0);
    assertEquals("/a~1b~0c", mistake.where());
    assertEquals(2, mistake.line());
  }

  @Test
  void aMissingSchemaIsSaid() {
    assertThrows(
        IllegalArgumentException.class,
        () -> JsonSchema.resource(JsonSchemaTest.class, "none.json"));
  }
}
