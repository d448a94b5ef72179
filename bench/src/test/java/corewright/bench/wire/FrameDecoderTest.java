package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against fixtures/vectors, whose checks were computed by another program. */
class FrameDecoderTest {

  static List<Vectors> frames() {
    return Vectors.all("frame");
  }

  static List<Vectors> streams() {
    return Vectors.all("stream");
  }

  @Test
  void thereAreVectors() {
    assertTrue(frames().size() > 10 && streams().size() > 10);
  }

  @ParameterizedTest
  @MethodSource("frames")
  void aFrameIsReadInEveryPartition(Vectors frame) {
    byte[] wire = frame.wire();
    for (int size = 1; size <= wire.length; size++) {
      List<FrameEvent> events = inChunksOf(size, wire);
      assertEquals(1, events.size(), "chunks of " + size);
      FrameEvent.Good good = (FrameEvent.Good) events.get(0);
      assertEquals(Integer.parseInt(frame.value("type"), 16), good.type());
      assertEquals(Integer.parseInt(frame.value("sequence")), good.sequence());
      assertArrayEquals(frame.payload(), good.payload());
    }
  }

  @ParameterizedTest
  @MethodSource("streams")
  void aStreamIsReportedAsItIsInEveryPartition(Vectors stream) {
    byte[] wire = stream.wire();
    for (int size = 1; size <= wire.length; size++) {
      assertEquals(stream.values("expect"), words(inChunksOf(size, wire)), "chunks of " + size);
    }
  }

  @Test
  void noiseOfAMillionBytesIsSurvivedWithoutHoardingAndTheNextFrameIsFound() {
    Random noise = new Random(1);
    FrameDecoder decoder = new FrameDecoder();
    byte[] chunk = new byte[1000];
    for (int i = 0; i < 1000; i++) {
      noise.nextBytes(chunk);
      for (int j = 0; j < chunk.length; j += 50) {
        chunk[j] = 0x43; // many beginnings of a sync
        chunk[j + 1] = 0x57;
      }
      assertEquals(List.of(), good(decoder.feed(chunk, chunk.length)));
    }
    byte[] frame = Vectors.of("frame", "alive").wire();
    assertEquals(1, good(decoder.feed(frame, frame.length)).size());
  }

  @Test
  void everySingleBitErrorIsNoticed() {
    byte[] wire = Vectors.of("frame", "data-two-channels").wire();
    for (int bit = 0; bit < wire.length * 8; bit++) {
      byte[] damaged = wire.clone();
      damaged[bit / 8] ^= (byte) (1 << bit % 8);
      assertEquals(List.of(), good(new FrameDecoder().feed(damaged, damaged.length)), "bit " + bit);
    }
  }

  private static List<FrameEvent> good(List<FrameEvent> events) {
    return events.stream().filter(e -> e instanceof FrameEvent.Good).toList();
  }

  private static List<FrameEvent> inChunksOf(int size, byte[] wire) {
    FrameDecoder decoder = new FrameDecoder();
    List<FrameEvent> events = new ArrayList<>();
    for (int at = 0; at < wire.length; at += size) {
      byte[] chunk = Arrays.copyOfRange(wire, at, Math.min(at + size, wire.length));
      events.addAll(decoder.feed(chunk, chunk.length));
    }
    return events;
  }

  /** In the words of the vectors. */
  private static List<String> words(List<FrameEvent> events) {
    List<String> words = new ArrayList<>();
    for (FrameEvent event : events) {
      if (event instanceof FrameEvent.Good good) {
        words.add(String.format(Locale.ROOT, "good %02X %d", good.type(), good.sequence()));
      } else if (event instanceof FrameEvent.Lost lost) {
        words.add("lost " + lost.count());
      } else {
        words.add(event instanceof FrameEvent.Broken ? "broken" : "repeated");
      }
    }
    return words;
  }
}
