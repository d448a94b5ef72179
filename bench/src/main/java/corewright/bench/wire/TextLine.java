package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

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
  private final byte[] chunk = new byte[1024];

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
    long deadline = clock.nanos() + patience.toNanos();
    ByteArrayOutputStream answer = new ByteArrayOutputStream();
    while (true) {
      long left = Math.max(deadline - clock.nanos(), 0);
      int count = link.read(chunk, Duration.ofNanos(left));
      answer.write(chunk, 0, count);
      byte[] bytes = answer.toByteArray();
      int end = indexOf(bytes, receiveEnd);
      if (end >= 0) {
        return new String(bytes, 0, end, StandardCharsets.ISO_8859_1);
      }
      if (bytes.length > LONGEST_ANSWER) {
        throw fault(
            message,
            bytes.length + " bytes without an end of line",
            "Check the line rate and the terminator in the dialect.");
      }
      if (clock.nanos() >= deadline) {
        throw silent(message, new String(bytes, StandardCharsets.ISO_8859_1));
      }
    }
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
