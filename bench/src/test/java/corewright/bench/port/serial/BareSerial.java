package corewright.bench.port.serial;

import com.fazecast.jSerialComm.SerialPort;

/** The serial library by itself, as little around it as can be: what everything else costs. */
public final class BareSerial {
  private BareSerial() {}

  /**
   * Sends something, reads for so long and throws away what comes.
   *
   * @return bytes a second
   */
  public static double read(String path, byte[] first, double seconds) {
    SerialLink.list(); // unpacks the native library where nobody else has it
    SerialPort port = SerialPort.getCommPort(path);
    port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, 100, 0);
    if (!port.openPort()) {
      throw new IllegalStateException(path + " does not open");
    }
    try {
      port.writeBytes(first, first.length);
      byte[] chunk = new byte[65_536];
      long bytes = 0;
      long begun = System.nanoTime();
      long until = begun + (long) (seconds * 1e9);
      while (System.nanoTime() < until) {
        bytes += Math.max(0, port.readBytes(chunk, chunk.length));
      }
      return bytes / ((System.nanoTime() - begun) * 1e-9);
    } finally {
      port.closePort();
    }
  }
}
