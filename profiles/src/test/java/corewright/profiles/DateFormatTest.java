package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Weeks of dates against the calendar: ISO 8601 gives 2009 and 2015 a week 53, and puts 1 January
 * 2016 into it (from memory; `date -d 2016-01-01 +%GW%V` says 2015W53).
 */
class DateFormatTest {

  @ParameterizedTest
  @CsvSource({
    "YYWW, 1431, 2014w31",
    "YYWW, 1553, 2015w53",
    "YYWW, 1453, ''",
    "YYWW, 1400, ''",
    "WWYY, 3114, 2014w31",
    "WWYY, 1431, 2031w14",
    "YYYYWW, 201431, 2014w31",
    "YYYYWW, 199931, ''",
    "YYDDD, 14001, 2014w01",
    "YYDDD, 16001, 2015w53",
    "YYDDD, 16366, 2016w52",
    "YYDDD, 15366, ''",
    "YYDDD, 15000, ''",
    "YWW, 431, 2004w31 2014w31 2024w31 2034w31 2044w31 2054w31 2064w31 2074w31 2084w31 2094w31",
    "YYWW, 143, ''",
    "YYWW, '', ''"
  })
  void aCodeIsTheWeeksThatItCanMean(DateFormat format, String code, String weeks) {
    assertEquals(
        weeks, format.weeks(code).stream().map(DateFormat::words).collect(Collectors.joining(" ")));
  }

  @Test
  void whatPartsTheDigitsIsPassedOver() {
    assertEquals("201431", DateFormat.digits("2014w31"));
    assertEquals("1431", DateFormat.digits(" 14-31 "));
    assertEquals("", DateFormat.digits("14P31"));
    assertEquals(Set.of(201431), DateFormat.YYYYWW.weeks(DateFormat.digits("2014/31")));
  }

  /** 53 weeks of 2015 lie between its first week and the next year's. */
  @Test
  void weeksAreCountedAcrossTheYear() {
    assertEquals(53, DateFormat.between(201501, 201601));
    assertEquals(-1, DateFormat.between(201601, 201553));
    assertEquals(0, DateFormat.between(201431, 201431));
  }
}
