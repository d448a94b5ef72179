package corewright.bench.wire;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Makes the station's frames and counts them; see WIRE.md. Not thread-safe. */
public final class FrameEncoder {
  private int sequence;

  /** Number of the next frame. */
  public int sequence() {
    return sequence;
  }

  byte[] identify() {
    return frame(FrameFormat.IDENTIFY, payload(0));
  }

  byte[] start(int rate_Hz, int samplesPerFrame, boolean acknowledged) {
    return frame(
        FrameFormat.START,
        payload(8)
            .putInt(rate_Hz)
            .putShort((short) samplesPerFrame)
            .put((byte) (acknowledged ? 1 : 0)));
  }

  byte[] acknowledge(int dataSequence) {
    return frame(FrameFormat.ACKNOWLEDGE, payload(2).putShort((short) dataSequence));
  }

  byte[] stop() {
    return frame(FrameFormat.STOP, payload(0));
  }

  byte[] heartbeat(int holdOff_ms) {
    return frame(FrameFormat.HEARTBEAT, payload(2).putShort((short) holdOff_ms));
  }

  byte[] relay(boolean closed) {
    return frame(FrameFormat.RELAY, payload(1).put((byte) (closed ? 1 : 0)));
  }

  private static ByteBuffer payload(int bytes) {
    return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  private byte[] frame(int type, ByteBuffer payload) {
    int n = payload.capacity();
    byte[] bytes = new byte[FrameFormat.HEADER_BYTES + n + FrameFormat.CHECK_BYTES];
    ByteBuffer frame =
        ByteBuffer.wrap(bytes)
            .order(ByteOrder.LITTLE_ENDIAN)
            .put((byte) FrameFormat.SYNC_0)
            .put((byte) FrameFormat.SYNC_1)
            .put((byte) FrameFormat.VERSION)
            .put((byte) type)
            .putShort((short) sequence)
            .putShort((short) n);
    frame.putShort((short) Checks.crc16(bytes, 0, 8)).put(payload.rewind());
    frame.putInt(Checks.crc32c(bytes, 0, frame.position()));
    sequence = (sequence + 1) & 0xFFFF;
    return bytes;
  }
}
