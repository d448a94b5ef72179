package corewright.bench.wire;

import java.util.zip.CRC32C;

/** The two check sums of WIRE.md. */
final class Checks {
  private static final int[] TABLE = table();

  private Checks() {}

  /** CRC-16/CCITT-FALSE: polynomial 1021, start FFFF, no reflection, no final xor. */
  static int crc16(byte[] bytes, int from, int length) {
    int crc = 0xFFFF;
    for (int i = from; i < from + length; i++) {
      crc = ((crc << 8) & 0xFFFF) ^ TABLE[(crc >>> 8) ^ (bytes[i] & 0xFF)];
    }
    return crc;
  }

  /** CRC-32C (Castagnoli), as in RFC 3720. */
  static int crc32c(byte[] bytes, int from, int length) {
    CRC32C crc = new CRC32C();
    crc.update(bytes, from, length);
    return (int) crc.getValue();
  }

  private static int[] table() {
    int[] table = new int[256];
    for (int i = 0; i < 256; i++) {
      int crc = i << 8;
      for (int bit = 0; bit < 8; bit++) {
        crc = (crc & 0x8000) != 0 ? (crc << 1) ^ 0x1021 : crc << 1;
      }
      table[i] = crc & 0xFFFF;
    }
    return table;
  }
}
