package corewright.bench.identify;

import static corewright.bench.identify.InventedKey.answers;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Identification;
import corewright.profiles.DateFormat;
import corewright.profiles.Family;
import corewright.profiles.Scale;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates as they are read off labels and parts, in 2024. */
class DatesTest {
  private static final Family FAMILY = InventedKey.dated();
  private static final Instant MARCH_2024 = Instant.parse("2024-03-04T08:00:00Z");

  @ParameterizedTest
  @CsvSource({
    "1431, early, ''",
    "201645, late, ''",
    "16w45, late, ''",
    "143, not seen, 'it is not written as the family''s dates are, YYWW or YYYYWW'",
    "14P31, not seen, 'it is not written as the family''s dates are, YYWW or YYYYWW'",
    "1453, not seen, the calendar has no such week or day (YYWW or YYYYWW)",
    "2431, not seen, 2024w31 had not come when it was read",
    "1101, not seen, no unit of the family was made in 2011w01",
    "1801, not seen, no unit of the family was made in 2018w01",
  })
  void aDateIsTakenWhereItCanBeTrueAndElseSaysWhyNot(String read, String answer, String doubt) {
    assertEquals(answer, Identifier.answer(InventedKey.DATE_READ, read, MARCH_2024));
    assertEquals(doubt, Identifier.doubt(InventedKey.DATE_READ, read, MARCH_2024));
  }

  /** 1215 is week 15 of 2012 or week 12 of 2015: two builds, so it counts for neither. */
  @Test
  void aDateOfTwoFormatsThatNameTwoBuildsCountsForNothing() {
    Scale both =
        new Scale(
            "year and week",
            List.of(
                new Scale.Band("early", 201201, 201501), new Scale.Band("late", 201501, 201601)),
            List.of(DateFormat.YYWW, DateFormat.WWYY));
    assertEquals(
        "it can be 2012w15 or 2015w12",
        Identifier.doubt(InventedKey.with(both), "1215", MARCH_2024));
    assertEquals("early", Identifier.answer(InventedKey.with(both), "1312", MARCH_2024));
  }

  /** By the calendar 82 weeks lie between the last week of early builds, 2015w39, and 2017w15. */
  @Test
  void aDateAfterTheBuildsEndIsAConflictWithItsDistance() {
    Identification seen = identify("bosses=6 connector=grey switching=65 board=B date=1631");
    assertEquals("SOFT", seen.variant());
    assertTrue(
        seen.conflicts()
            .contains(
                "'date' was read as 1631, 2016w31, 45 weeks after the last SOFT was made"
                    + " (reliability 0.70)."),
        seen.conflicts().toString());
    assertEquals(45, DateFormat.between(201539, 201631), "2015 has 53 weeks");
  }

  @Test
  void anImpossibleDateIsSaidAndCountsForNothing() {
    assertEquals(identify("bosses=6").posteriors(), identify("bosses=6 date=1453").posteriors());
    assertEquals(
        List.of(
            "'date' was read as 1453 and counts for nothing: the calendar has no such week or day"
                + " (YYWW or YYYYWW)."),
        identify("bosses=6 date=1453").conflicts());
  }

  @Test
  void partsThatAreYoungerThanTheLabelAreSaid() {
    assertTrue(
        identify("date=1431 parts=1610 board=B").conflicts().stream()
            .anyMatch(
                c -> c.startsWith("Its youngest part is of 2016w10, 84 weeks after the label's")));
    assertTrue(identify("date=1431 parts=1440 board=B").conflicts().isEmpty(), "of one making");
  }

  /** The scale is good to 5 g: at 497 g the border of 500 g lies within. */
  @Test
  void aMassAtTheBorderOfTwoBuildsCountsForNothing() {
    assertEquals("light", Identifier.answer(InventedKey.WEIGHED, "494 g", MARCH_2024));
    assertEquals(
        "within its uncertainty it can be light or heavy",
        Identifier.doubt(InventedKey.WEIGHED, "497", MARCH_2024));
    assertEquals("light", Identifier.answer(InventedKey.WEIGHED, "497 ± 1 g", MARCH_2024));
    assertEquals("heavy", Identifier.answer(InventedKey.WEIGHED, "0,622 kg", MARCH_2024));
    assertEquals("it is no number of g", Identifier.doubt(InventedKey.WEIGHED, "1 lb", MARCH_2024));
    assertEquals("no build has that", Identifier.doubt(InventedKey.WEIGHED, "4 kg", MARCH_2024));
  }

  private static Identification identify(String words) {
    return Identifier.identify(FAMILY, answers(words));
  }
}
