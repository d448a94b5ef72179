package corewright.bench.port;

import java.time.Duration;

/**
 * A line that carries bytes both ways. One user, one thread; only {@link #close} may be called from
 * another. Every fault names the port, what was being done, what was found and what to do.
 */
public interface Link extends AutoCloseable {

  /** The port, as a person knows it: {@code /dev/ttyUSB0}. */
  String name();

  /**
   * Hands all bytes to the line.
   *
   * @throws InstrumentFault if they are not taken within {@code patience}, or the line is lost
   */
  void write(byte[] bytes, Duration patience);

  /**
   * Waits for at least one byte.
   *
   * @return how many bytes were put at the front of {@code into}; 0 if none came within {@code
   *     patience}
   * @throws InstrumentFault if the line is lost
   */
  int read(byte[] into, Duration patience);

  /**
   * Gives the port back. A command that must arrive has to be answered before: closing discards
   * what is still on its way. Idempotent, never throws.
   */
  @Override
  void close();
}
