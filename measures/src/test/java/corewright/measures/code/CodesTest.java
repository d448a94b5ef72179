package corewright.measures.code;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CodesTest {
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 7, 1000})
  void givesBackWhatWasPacked(int count) {
    short[] codes = Seeded.codes(Seeded.Kind.UNIFORM, count, 1);
    Codes packed = Codes.of(codes);
    assertEquals(count, packed.size());
    for (int i = 0; i < count; i++) {
      assertEquals(codes[i], packed.at(i));
    }
  }

  /**
   * Little-endian memory is the definition of the order: checked against the platform's buffers.
   */
  @Test
  void packsAsALittleEndianFileDoes() {
    short[] codes = Seeded.codes(Seeded.Kind.UNIFORM, 1000, 2);
    ByteBuffer file = ByteBuffer.allocate(2000).order(ByteOrder.LITTLE_ENDIAN);
    file.asShortBuffer().put(codes);
    int[] pairs = new int[500];
    file.asIntBuffer().get(pairs);
    Codes read = Codes.ofPairs(pairs, 999);
    for (int i = 0; i < read.size(); i++) {
      assertEquals(codes[i], read.at(i));
    }
  }

  @Test
  void refusesMoreCodesThanThereAre() {
    assertThrows(IllegalArgumentException.class, () -> Codes.ofPairs(new int[2], 5));
    Codes three = Codes.of((short) 1, (short) 2, (short) 3);
    assertThrows(IllegalArgumentException.class, () -> new CodeCounts().add(three, 1, 4));
    assertThrows(IllegalArgumentException.class, () -> new CodeCounts().add(three, 2, 1));
    assertThrows(IllegalArgumentException.class, () -> new CodeCounts().add(three, -1, 1));
  }
}
