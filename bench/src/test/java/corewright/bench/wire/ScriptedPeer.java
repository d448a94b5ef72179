package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.FakeClock;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A line in memory with somebody at its other end, who answers each message with text, whole as it
 * goes over the wire; empty for silence. Its time passes only in waiting.
 */
class ScriptedPeer implements Link {
  final List<String> heard = new ArrayList<>();
  final FakeClock clock = new FakeClock();
  boolean closed;

  /** How many bytes each read gives at most. */
  int chunk = Integer.MAX_VALUE;

  private final String end;
  private final StringBuilder message = new StringBuilder();
  private byte[] waiting = {};
  private Function<String, String> answers;

  /**
   * @param end what ends a message to it
   */
  ScriptedPeer(String end, Function<String, String> answers) {
    this.end = end;
    this.answers = answers;
  }

  void answers(Function<String, String> other) {
    answers = other;
  }

  /** Bytes that nobody asked for. */
  void say(String text) {
    byte[] more = text.getBytes(StandardCharsets.ISO_8859_1);
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.writeBytes(waiting);
    all.writeBytes(more);
    waiting = all.toByteArray();
  }

  @Override
  public String name() {
    return "pipe";
  }

  @Override
  public void write(byte[] bytes, Duration patience) {
    if (closed) {
      throw new InstrumentFault("pipe", "writing", "it is closed", "Open it.");
    }
    message.append(new String(bytes, StandardCharsets.ISO_8859_1));
    for (int at = message.indexOf(end); at >= 0; at = message.indexOf(end)) {
      String whole = message.substring(0, at);
      message.delete(0, at + end.length());
      heard.add(whole);
      say(answers.apply(whole));
    }
  }

  @Override
  public int read(byte[] into, Duration patience) {
    if (waiting.length == 0) {
      clock.pause(patience);
      return 0;
    }
    int count = Math.min(chunk, Math.min(into.length, waiting.length));
    System.arraycopy(waiting, 0, into, 0, count);
    waiting = java.util.Arrays.copyOfRange(waiting, count, waiting.length);
    return count;
  }

  @Override
  public void close() {
    closed = true;
  }
}
