package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class TagsTest {
  @Test
  void theCheckCharacterIsThatOfThePublishedExample() {
    // Global Release Identifier, which uses ISO/IEC 7064 MOD 37,36: A1-2425G-ABC1234002-M (from
    // memory of its published example)
    assertEquals('M', Tags.check("A12425GABC1234002"));
  }

  @Test
  void everyMistypedCharacterIsCaught() {
    for (long number : new long[] {1, 9, 10, 90, 418, 9_999, 54_321, 90_909, 100_000, 1_234_567}) {
      String tag = Tags.of(number);
      for (int i = 2; i < tag.length(); i++) {
        for (char c = '0'; c <= '9'; c++) {
          String wrong = tag.substring(0, i) + c + tag.substring(i + 1);
          assertEquals(wrong.equals(tag), Tags.isValid(wrong), wrong);
        }
      }
    }
  }

  @Test
  void nearlyEverySwapOfTwoNeighbouringDigitsIsCaught() {
    int swaps = 0;
    int missed = 0;
    for (int number = 1; number < 100_000; number++) {
      String tag = Tags.of(number);
      for (int i = 2; i < 6; i++) {
        if (tag.charAt(i) != tag.charAt(i + 1)) {
          swaps++;
          String swapped =
              tag.substring(0, i) + tag.charAt(i + 1) + tag.charAt(i) + tag.substring(i + 2);
          missed += Tags.isValid(swapped) ? 1 : 0;
        }
      }
    }
    // counted by a program of its own in another language
    assertEquals(360_000, swaps);
    assertEquals(1_738, missed);
  }

  @Test
  void aTagIsReadAsPeopleTypeIt() {
    assertEquals(Tags.of(418), Tags.read(" u-00418"));
    assertEquals(Tags.of(418), Tags.read(Tags.of(418).toLowerCase(Locale.ROOT)));
    assertEquals("JOB-17/B", Tags.read("job-17/b"));
    assertFalse(Tags.isValid("JOB-17/B"));
  }

  @Test
  void aMistypedTagIsRefusedWithARemedy() {
    String mistyped = "U-00481" + Tags.of(418).charAt(7);
    LedgerFault fault = assertThrows(LedgerFault.class, () -> Tags.read(mistyped));
    assertEquals(
        "The check character of tag " + mistyped + " is wrong. Read it again or scan it",
        fault.getMessage());
    assertThrows(LedgerFault.class, () -> Tags.read("<script>"));
    assertThrows(LedgerFault.class, () -> Tags.read(""));
  }
}
