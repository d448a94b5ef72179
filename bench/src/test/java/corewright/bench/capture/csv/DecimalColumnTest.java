package corewright.bench.capture.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What decimal arithmetic says of the same values: m·10⁻ᵖ, wherever they lie. */
class DecimalColumnTest {
  private static final int MANY = 9_000_000; // two blocks and a part: the first two leave the heap

  @Test
  void aLongColumnIsTheSameAsAShortOne() {
    DecimalColumn column = new DecimalColumn(MANY);
    Random random = new Random(11);
    for (int i = 0; i < MANY; i++) {
      if (i == 5_000_000) {
        column.add(1_234_567, 5); // one decimal more: all before are rewritten
      } else {
        column.add(random.nextInt(500_000), 4);
      }
    }
    column.repeat(1);
    assertEquals(MANY + 1, column.size());
    Waveform wave = column.waveform(Unit.VOLT, 0);
    assertEquals(MANY + 1, wave.size());
    assertEquals(1e-5, wave.lsb());
    random.setSeed(11);
    int last = 0;
    for (int i = 0; i < MANY; i++) {
      int expected = i == 5_000_000 ? 1_234_567 : 10 * random.nextInt(500_000);
      assertTrue(expected == wave.codeAt(i), "value " + i);
      last = wave.codeAt(i);
    }
    assertEquals(last, wave.codeAt(MANY));
  }

  /**
   * 21474.83648 does not fit 31 bits with five decimals: the last one is rounded away everywhere.
   */
  @Test
  void aValueTooLargeMakesAllCoarser() {
    DecimalColumn column = new DecimalColumn(1);
    column.add(123_456, 5);
    column.add(2_147_483_648L, 5);
    Waveform wave = column.waveform(Unit.VOLT, 0);
    assertEquals(1e-4, wave.lsb());
    assertEquals(12_346, wave.codeAt(0));
    assertEquals(214_748_365, wave.codeAt(1));
  }
}
