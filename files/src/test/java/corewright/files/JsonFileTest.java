package corewright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonFileTest {
  @TempDir private Path folder;

  private static List<Mistake> mistakesOf(String text) {
    return assertThrows(BadFile.class, () -> JsonFile.of(Texts.file(text))).mistakes();
  }

  @Test
  void knowsWhereEachValueStands() {
    JsonFile file =
        JsonFile.of(
            Texts.file(
                """
                {
                  "a": 1,
                  "b": [
                    true, { "c": "x" },
                    -2.5e1
                  ]
                }
                """));
    assertEquals(new Place(2, 3), file.place("/a"));
    assertEquals(new Place(4, 5), file.place("/b/0"));
    assertEquals(new Place(4, 13), file.place("/b/1/c"));
    assertEquals(new Place(5, 5), file.place("/b/2"));
    assertEquals(new Place(4, 11), file.place("/b/1/nothing"), "a missing key: its object");
    assertEquals(new Place(1, 1), file.place(""));
    assertEquals(-25.0, file.root().at("/b/2").asDouble());
    assertEquals("x", file.root().at("/b/1/c").asText());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {;  "a": 1,;}                 | 3 | Remove the comma before it, or quote the key
          {;  "a": 1;  "b": 2;}         | 3 | Write a comma between the two, or a decimal point
          {;  "a": 47,5;}               | 2 | Remove the comma before it, or quote the key
          {;  "a" 1;}                   | 2 | Write a colon between key and value
          {;  "a": [1, 2;               | 3 | A closing bracket or quote is missing
          {;  "a": 1 // one;}           | 2 | Remove the comment: JSON has none
          {;  "a": 007;}                | 2 | Write the number without leading zeros
          {};{}                         | 2 | Remove it, or the bracket that closed too early
          {;  "a": 1e999;}              | 2 | Write a number that a bench can reach
          {;  "a": NaN;}                | 2 | Correct the JSON there
          ''                            | 1 | Write a JSON object, { … }
          """)
  void saysWhichLineIsNoJson(String text, int line, String suggestion) {
    List<Mistake> mistakes = mistakesOf(text.replace(';', '\n'));
    assertEquals(1, mistakes.size(), mistakes.toString());
    assertEquals(line, mistakes.get(0).line(), mistakes.toString());
    assertEquals(suggestion, mistakes.get(0).suggestion(), mistakes.toString());
    assertFalse(mistakes.get(0).message().contains("Source:"), mistakes.toString());
  }

  @Test
  void refusesAKeyThatStandsTwiceAndNamesBothLines() {
    List<Mistake> mistakes = mistakesOf("{\n \"a\": 1,\n \"b\": {\"a\": 2},\n \"a\": 3\n}");
    assertEquals(
        List.of(
            new Mistake(
                "menu.json",
                4,
                "/a",
                "the key 'a' stands here again, first on line 2",
                "Remove one of the two")),
        mistakes);
  }

  @Test
  void readsAFileWithTheHashOfItsBytes() throws IOException {
    Path path = folder.resolve("a.json");
    Files.write(path, "\uFEFF{\"ä\": 1}".getBytes(StandardCharsets.UTF_8));
    JsonFile file = JsonFile.read(path);
    // sha256sum (GNU coreutils) of the same bytes, the byte order mark included
    assertEquals(
        "7a7dc08d22b6785618ac9e5a9498448c0a100f4b3f991d48911afde145007785", file.origin().sha256());
    assertEquals("{\"ä\": 1}", file.origin().text());
    assertEquals(1, file.root().path("ä").asInt());
  }

  @Test
  void saysWhichFileCannotBeRead() throws IOException {
    Path latin = folder.resolve("latin.json");
    Files.write(latin, "{\n\"a\": \"ä\"}".getBytes(StandardCharsets.ISO_8859_1));
    Mistake encoding = assertThrows(BadFile.class, () -> JsonFile.read(latin)).mistakes().get(0);
    assertEquals(2, encoding.line());
    assertEquals("byte 8 (0xE4) is not UTF-8", encoding.message());

    Path missing = folder.resolve("none.json");
    Mistake none = assertThrows(BadFile.class, () -> JsonFile.read(missing)).mistakes().get(0);
    assertEquals(missing.toString(), none.file());
    assertEquals("there is no such file", none.message());
    assertEquals(
        "this is not a file",
        assertThrows(BadFile.class, () -> JsonFile.read(folder)).mistakes().get(0).message());
  }

  @Test
  void refusesWithTheMistakesInTheOrderOfTheLines() {
    JsonFile file = JsonFile.of(Texts.file("{\n\"a\": 1,\n\"b\": 2}"));
    JsonFile.refuse(List.of());
    BadFile bad =
        assertThrows(
            BadFile.class,
            () ->
                JsonFile.refuse(
                    List.of(
                        file.mistake("/b", "is wrong", "Mend b"),
                        file.mistake("/a", "is wrong", "Mend a"))));
    assertEquals(
        "menu.json:2: /a: is wrong. Mend a\nmenu.json:3: /b: is wrong. Mend b", bad.getMessage());
  }
}
