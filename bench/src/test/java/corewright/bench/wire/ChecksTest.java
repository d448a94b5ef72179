package corewright.bench.wire;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ChecksTest {
  private static final byte[] DIGITS = "123456789".getBytes(US_ASCII);

  @Test
  void crc16IsTheOneOfTheCommonCatalogueOfChecks() {
    // check value of CRC-16/CCITT-FALSE for "123456789", computed bitwise elsewhere
    assertEquals(0x29B1, Checks.crc16(DIGITS, 0, 9));
    byte[] within = new byte[20];
    System.arraycopy(DIGITS, 0, within, 7, 9);
    assertEquals(0x29B1, Checks.crc16(within, 7, 9));
  }

  @Test
  void crc32cIsTheOneOfRfc3720() {
    assertEquals(0xE3069283, Checks.crc32c(DIGITS, 0, 9));
    // RFC 3720, B.4: 32 zeros, 32 ones, counting up, counting down
    byte[] ones = new byte[32];
    Arrays.fill(ones, (byte) 0xFF);
    assertEquals(0x8A9136AA, Checks.crc32c(new byte[32], 0, 32));
    assertEquals(0x62A8AB43, Checks.crc32c(ones, 0, 32));
    assertEquals(0x46DD794E, Checks.crc32c(counting(i -> i), 0, 32));
    assertEquals(0x113FDB5C, Checks.crc32c(counting(i -> 31 - i), 0, 32));
  }

  private static byte[] counting(java.util.function.IntUnaryOperator value) {
    byte[] bytes = new byte[32];
    IntStream.range(0, 32).forEach(i -> bytes[i] = (byte) value.applyAsInt(i));
    return bytes;
  }
}
