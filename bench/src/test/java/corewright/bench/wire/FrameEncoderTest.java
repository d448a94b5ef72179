package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against fixtures/vectors, whose checks were computed by another program. */
class FrameEncoderTest {

  @ParameterizedTest
  @CsvSource({
    "identify",
    "start-acknowledged",
    "start-free",
    "acknowledge",
    "stop",
    "heartbeat",
    "relay-closed",
    "relay-open"
  })
  void aFrameIsWrittenByteForByte(String name) {
    Vectors vector = Vectors.of("frame", name);
    FrameEncoder encoder = new FrameEncoder();
    int sequence = Integer.parseInt(vector.value("sequence"));
    while (encoder.sequence() != sequence) {
      encoder.stop();
    }
    assertArrayEquals(vector.wire(), writer(name).apply(encoder));
    assertEquals((sequence + 1) % 65_536, encoder.sequence());
  }

  private static Function<FrameEncoder, byte[]> writer(String name) {
    return switch (name) {
      case "identify" -> FrameEncoder::identify;
      case "start-acknowledged" -> e -> e.start(250_000, 2500, true);
      case "start-free" -> e -> e.start(10_000, 100, false);
      case "acknowledge" -> e -> e.acknowledge(65_535);
      case "stop" -> FrameEncoder::stop;
      case "heartbeat" -> e -> e.heartbeat(500);
      case "relay-closed" -> e -> e.relay(true);
      case "relay-open" -> e -> e.relay(false);
      default -> throw new IllegalArgumentException(name);
    };
  }
}
