package corewright.benchmarks;

import corewright.bench.wire.FrameDecoder;
import corewright.bench.wire.FrameEvent;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.zip.CRC32C;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** 4 MB of the framed stream of WIRE.md, cut into chunks as a serial port hands them over. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FrameBenchmark {
  private static final int FRAMES = 1000;
  private static final int PAYLOAD = 4096;
  private static final int CHUNK = 4096;

  private final byte[] stream = stream();

  private static byte[] stream() {
    ByteBuffer out = ByteBuffer.allocate(FRAMES * (PAYLOAD + 14)).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < FRAMES; i++) {
      int start = out.position();
      out.put((byte) 0x43).put((byte) 0x57).put((byte) 1).put((byte) 4);
      out.putShort((short) i).putShort((short) PAYLOAD);
      out.putShort((short) crc16(out.array(), start, 8));
      out.position(out.position() + PAYLOAD);
      CRC32C check = new CRC32C();
      check.update(out.array(), start, PAYLOAD + 10);
      out.putInt((int) check.getValue());
    }
    return out.array();
  }

  /** CRC-16/CCITT-FALSE, bit by bit. */
  private static int crc16(byte[] bytes, int from, int length) {
    int crc = 0xFFFF;
    for (int i = from; i < from + length; i++) {
      crc ^= (bytes[i] & 0xFF) << 8;
      for (int bit = 0; bit < 8; bit++) {
        crc = (crc & 0x8000) != 0 ? (crc << 1) ^ 0x1021 : crc << 1;
      }
    }
    return crc & 0xFFFF;
  }

  @Benchmark
  public int decode() {
    FrameDecoder decoder = new FrameDecoder();
    byte[] chunk = new byte[CHUNK];
    int good = 0;
    for (int at = 0; at < stream.length; at += CHUNK) {
      int length = Math.min(CHUNK, stream.length - at);
      System.arraycopy(stream, at, chunk, 0, length);
      List<FrameEvent> events = decoder.feed(chunk, length);
      good += (int) events.stream().filter(FrameEvent.Good.class::isInstance).count();
    }
    if (good != FRAMES) {
      throw new IllegalStateException(good + " good frames of " + FRAMES);
    }
    return good;
  }
}
