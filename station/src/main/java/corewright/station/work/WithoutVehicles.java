package corewright.station.work;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import corewright.bench.life.VehicleNumbers;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Copies a file that people gave, as a customer's log; in text no vehicle's number goes along. */
final class WithoutVehicles {
  private static final int LOOKED_AT = 4096;

  /** A number of 17 characters is found across no longer stretch than this. */
  private static final int LONGEST_LINE = 1 << 20;

  private WithoutVehicles() {}

  /**
   * Copies a file.
   *
   * @return whether anything was left out
   */
  static boolean copy(Path from, Path to) throws IOException {
    if (!isText(from)) {
      Files.copy(from, to);
      return false;
    }
    boolean leftOut = false;
    try (InputStream in = new BufferedInputStream(Files.newInputStream(from));
        OutputStream out = new BufferedOutputStream(Files.newOutputStream(to))) {
      for (byte[] line = line(in); line.length > 0; line = line(in)) {
        String text = new String(line, ISO_8859_1); // one character a byte, whatever it means
        String without = VehicleNumbers.without(text);
        leftOut |= !without.equals(text);
        out.write(without.getBytes(ISO_8859_1));
      }
    }
    return leftOut;
  }

  /** With its line feed; empty at the end. */
  private static byte[] line(InputStream in) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int b = in.read(); b >= 0; b = in.read()) {
      line.write(b);
      if (b == '\n' || line.size() >= LONGEST_LINE) {
        break;
      }
    }
    return line.toByteArray();
  }

  private static boolean isText(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      for (byte b : in.readNBytes(LOOKED_AT)) {
        if (b >= 0 && b < ' ' && b != '\t' && b != '\n' && b != '\r') {
          return false;
        }
      }
    }
    return true;
  }
}
