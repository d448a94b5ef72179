package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;

/**
 * Program messages out, answers in, over one line; nothing is known here about what they mean. Not
 * thread-safe.
 *
 * @see "IEEE 488.2-1992, 7 and 8: program and response messages"
 */
final class TextLine {
  /** Longer than any answer that is believed; more means that the line carries noise. */
  private static final int LONGEST_ANSWER = 4096;

  /** A line that has said nothing for this long has nothing more to say. */
  private static final Duration QUIET = Duration.ofMillis(50);

  private static final int MOST_CHUNKS = 100;

  private final String role;
  private final Link link;
  private final Clock clock;
  private final String sendEnd;
  private final byte[] receiveEnd;
  private final Duration patience;
  private final byte[] chunk = new byte[8192];

  /** What has come and was not asked for yet. */
  private byte[] held = {};

  TextLine(
      String role, Link link, Clock clock, String sendEnd, String receiveEnd, Duration patience) {
    this.role = role;
    this.link = link;
    this.clock = clock;
    this.sendEnd = sendEnd;
    this.receiveEnd = receiveEnd.getBytes(StandardCharsets.ISO_8859_1);
    this.patience = patience;
  }

  /** Sends a message and waits for its answer, without its terminator. */
  String ask(String message) {
    send(message);
    return receive(message);
  }

  /** Sends a message. What was received before belongs to no question and is dropped. */
  void send(String message) {
    drain(Duration.ZERO);
    link.write((message + sendEnd).getBytes(StandardCharsets.ISO_8859_1), patience);
  }

  /** The next answer. */
  String receive(String message) {
    return next(message, patience)
        .orElseThrow(() -> silent(message, new String(held, StandardCharsets.ISO_8859_1)));
  }

  /** The next line, asked for or not; empty if none ends within {@code within}. */
  Optional<String> next(String message, Duration within) {
    long deadline = clock.nanos() + within.toNanos();
    while (true) {
      int end = indexOf(held, receiveEnd);
      if (end >= 0) {
        return Optional.of(new String(take(end, receiveEnd.length), StandardCharsets.ISO_8859_1));
      }
      if (held.length > LONGEST_ANSWER) {
        throw fault(
            message,
            held.length + " bytes without an end of line",
            "Check the line rate and the terminator in the dialect.");
      }
      if (!read(deadline)) {
        return Optional.empty();
      }
    }
  }

  /**
   * Sends a query and takes the block of bytes that answers it.
   *
   * @param most bytes of the block, and all of them where it does not say how many it has
   * @see "IEEE 488.2-1992, 8.7.9 definite and 8.7.10 indefinite length arbitrary block"
   */
  byte[] askBlock(String message, int most) {
    send(message);
    long deadline = clock.nanos() + patience.toNanos();
    need(2, message, deadline);
    int digits = held[1] - '0';
    if (held[0] != '#' || digits < 0 || digits > 9) {
      throw noBlock(message, "'" + Texts.printable(start()) + "' does not begin a block");
    }
    need(2 + digits, message, deadline);
    int length = digits == 0 ? most : length(message, digits, most);
    need(2 + digits + length + receiveEnd.length, message, deadline);
    take(2 + digits, 0);
    byte[] block = take(length, 0);
    if (indexOf(Arrays.copyOf(held, receiveEnd.length), receiveEnd) != 0) {
      throw noBlock(message, "the block does not end after " + length + " bytes");
    }
    take(0, receiveEnd.length);
    return block;
  }

  private int length(String message, int digits, int most) {
    String said = new String(held, 2, digits, StandardCharsets.ISO_8859_1);
    long length = said.matches("[0-9]+") ? Long.parseLong(said) : Long.MAX_VALUE;
    if (length > most) {
      throw noBlock(message, "the block's length is said to be '" + Texts.printable(said) + "'");
    }
    return (int) length;
  }

  /** Waits until so many bytes are held. */
  private void need(int bytes, String message, long deadline) {
    while (held.length < bytes) {
      if (!read(deadline)) {
        throw silent(message, start());
      }
    }
  }

  private String start() {
    return new String(held, 0, Math.min(held.length, 60), StandardCharsets.ISO_8859_1);
  }

  private InstrumentFault noBlock(String message, String found) {
    return fault(message, found, "Check the format, the byte order and the number of points.");
  }

  /** Takes bytes from the front, and drops some after them. */
  private byte[] take(int bytes, int drop) {
    byte[] taken = Arrays.copyOf(held, bytes);
    held = Arrays.copyOfRange(held, bytes + drop, held.length);
    return taken;
  }

  /** Reads one chunk; false if the deadline passed without one. */
  private boolean read(long deadline) {
    long left = Math.max(deadline - clock.nanos(), 0);
    int count = link.read(chunk, Duration.ofNanos(left));
    if (count == 0) {
      return clock.nanos() < deadline;
    }
    int before = held.length;
    held = Arrays.copyOf(held, before + count);
    System.arraycopy(chunk, 0, held, before, count);
    return true;
  }

  /** Throws away what is on its way, until the line is quiet. */
  void settle() {
    drain(QUIET);
  }

  InstrumentFault fault(String message, String found, String remedy) {
    return new InstrumentFault(role, "'" + message + "' on " + link.name(), found, remedy);
  }

  void close() {
    link.close();
  }

  private void drain(Duration quiet) {
    held = new byte[0];
    for (int i = 0; i < MOST_CHUNKS; i++) { // a line that never stops talking must not hold us
      if (link.read(chunk, quiet) == 0) {
        return;
      }
    }
  }

  private InstrumentFault silent(String message, String soFar) {
    String found =
        soFar.isEmpty()
            ? "no answer within " + patience.toMillis() + " ms"
            : "only '"
                + Texts.printable(soFar)
                + "' and no end of line within "
                + patience.toMillis()
                + " ms";
    return fault(message, found, "Check the cable and that the instrument is on and in remote.");
  }

  private static int indexOf(byte[] bytes, byte[] wanted) {
    for (int at = 0; at + wanted.length <= bytes.length; at++) {
      int same = 0;
      while (same < wanted.length && bytes[at + same] == wanted[same]) {
        same++;
      }
      if (same == wanted.length) {
        return at;
      }
    }
    return -1;
  }
}
