package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import corewright.fixtures.describe.Descriptions;
import corewright.measures.Unit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/**
 * Answers and frames with bytes turned, lost, doubled, swapped or put in: the drivers state a fault
 * or take what was meant, and never fall over, hoard, or take for good a frame that nobody sent. A
 * million of them in {@code .ci/soak/mutations}, a share in every build.
 */
class MutationsTest {
  private static final int COUNT = Integer.getInteger("mutations.count", 20_000);
  private static final long SEED = Long.getLong("mutations.seed", 20_261_129);

  /** A frame, a chunk and some room; the longest answer that is believed. */
  private static final long MOST_MB = 8;

  private final Random random = new Random(SEED);

  @Test
  void neitherAFrameNorAnAnswerMakesUsSayWhatIsNotSo() {
    long before = used();
    int frames = frames(COUNT / 2);
    int answers = answers(COUNT - COUNT / 2);
    long growth_MB = (used() - before) >> 20;
    System.out.printf(
        java.util.Locale.ROOT,
        "mutations: count=%d wrong=%d crashed=0 growth_MB=%d%n",
        COUNT,
        frames + answers,
        Math.max(0, growth_MB));
    assertEquals(0, frames + answers);
    assertTrue(growth_MB <= MOST_MB, growth_MB + " MB are kept");
  }

  /**
   * One decoder for all of them, as on a line that is bad all day, and another that begins anew now
   * and then, since a frame's number may make the next ones count as repeated; how many were taken
   * wrongly.
   */
  private int frames(int count) {
    List<byte[]> wires = Vectors.all("frame").stream().map(Vectors::wire).toList();
    Set<String> sent = new HashSet<>();
    wires.forEach(w -> sent.add(content(w[3] & 0xFF, Arrays.copyOfRange(w, 10, w.length - 4))));
    int wrong = 0;
    FrameDecoder old = new FrameDecoder();
    FrameDecoder young = new FrameDecoder();
    for (int i = 0; i < count; i++) {
      byte[] wire = mutated(wires.get(random.nextInt(wires.size())));
      young = i % 3 == 0 ? new FrameDecoder() : young;
      List<FrameEvent> events = new ArrayList<>(old.feed(wire, wire.length));
      events.addAll(young.feed(wire, wire.length));
      for (FrameEvent event : events) {
        if (event instanceof FrameEvent.Good good) {
          wrong += sent.contains(content(good.type(), good.payload())) ? 0 : 1;
        }
      }
      wrong += read(wire) ? 0 : 1;
    }
    return wrong;
  }

  /** A payload whose checks hold although it is wrong: firmware can be bad too. */
  private static boolean read(byte[] payload) {
    return isStated(() -> !BoardFormat.identity(payload).channels().isEmpty())
        && isStated(() -> BoardFormat.data(payload, 0).samples() <= payload.length)
        && isStated(() -> BoardFormat.alive(payload) != null)
        && isStated(() -> BoardFormat.refusal(payload).length() <= payload.length + 20)
        && isStated(() -> BoardFormat.answer(payload).type() <= 0xFF);
  }

  private static boolean isStated(BooleanSupplier reading) {
    try {
      return reading.getAsBoolean();
    } catch (IllegalArgumentException stated) {
      return stated.getMessage() != null;
    }
  }

  private static String content(int type, byte[] payload) {
    return type + Arrays.toString(payload);
  }

  private String answer = "";

  /** Answers of an instrument; how many were taken for what they do not say. */
  private int answers(int count) {
    ScriptedPeer peer = new ScriptedPeer("\n", m -> answer);
    ScpiSession session =
        new ScpiSession("source", peer, Descriptions.shippedDialect("emulated-source"), peer.clock);
    int wrong = 0;
    for (int i = 0; i < count; i++) {
      String good = random.nextBoolean() ? "1.25E+01\n" : "1\n";
      answer = text(mutated(good.getBytes(StandardCharsets.ISO_8859_1)));
      peer.answers(m -> m.equals("SYSTem:ERRor?") ? "0,\"No error\"\n" : answer);
      boolean number = random.nextBoolean();
      try {
        if (number) {
          double value = session.number("voltage", Unit.VOLT).value();
          // what stands in the answer's first line, read by somebody else; nothing else is believed
          wrong += Math.abs(value - Double.parseDouble(firstLine().strip())) <= 1e-9 ? 0 : 1;
        } else {
          boolean on = session.state("output");
          wrong += firstLine().strip().equals(on ? "1" : "0") ? 0 : 1;
        }
      } catch (InstrumentFault stated) {
        wrong += stated.found().isEmpty() || stated.remedy().isEmpty() ? 1 : 0;
      }
      peer.heard.clear();
    }
    return wrong;
  }

  private String firstLine() {
    return answer.substring(0, answer.indexOf('\n'));
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  /** With one to four changes, now and then with a great deal put in. */
  private byte[] mutated(byte[] bytes) {
    byte[] changed = bytes;
    for (int n = 1 + random.nextInt(4); n > 0; n--) {
      changed = changed.length == 0 ? bytes : once(changed);
    }
    return changed;
  }

  private byte[] once(byte[] bytes) {
    int at = random.nextInt(bytes.length);
    byte[] head = Arrays.copyOf(bytes, at);
    byte[] tail = Arrays.copyOfRange(bytes, at, bytes.length);
    switch (random.nextInt(6)) {
      case 0 -> { // a bit turned
        byte[] turned = bytes.clone();
        turned[at] ^= (byte) (1 << random.nextInt(8));
        return turned;
      }
      case 1 -> { // another byte
        byte[] other = bytes.clone();
        other[at] = (byte) random.nextInt(256);
        return other;
      }
      case 2 -> { // the end or the beginning lost
        return random.nextBoolean() ? head : tail;
      }
      case 3 -> { // said twice from here
        return joined(bytes, tail);
      }
      case 4 -> { // turned round
        return joined(tail, head);
      }
      default -> { // something put in
        byte[] more = new byte[random.nextInt(1000) == 0 ? 10_000 : random.nextInt(20)];
        random.nextBytes(more);
        return joined(joined(head, more), tail);
      }
    }
  }

  private static byte[] joined(byte[] a, byte[] b) {
    byte[] both = Arrays.copyOf(a, a.length + b.length);
    System.arraycopy(b, 0, both, a.length, b.length);
    return both;
  }

  private static long used() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
