package corewright.bench.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts frames out of bytes that arrive in chunks of any size; see WIRE.md. No I/O, no clock. Holds
 * at most one frame and one chunk. Not thread-safe.
 */
public final class FrameDecoder {
  private static final int SEQUENCES = 65_536;
  private static final int UNKNOWN = -1;

  private byte[] pending = new byte[4096];
  private int from;
  private int to;
  private int expected = UNKNOWN;

  /** Everything that this chunk completes, in order; empty while a frame is still arriving. */
  public List<FrameEvent> feed(byte[] chunk, int length) {
    append(chunk, length);
    List<FrameEvent> events = new ArrayList<>();
    while (find()) {
      int n = u16(from + 6);
      int whole = FrameFormat.HEADER_BYTES + n + FrameFormat.CHECK_BYTES;
      if (to - from < whole) {
        break;
      }
      int type = pending[from + 3] & 0xFF;
      int sequence = u16(from + 4);
      if (Checks.crc32c(pending, from, whole - FrameFormat.CHECK_BYTES) == i32(from + whole - 4)) {
        byte[] payload =
            Arrays.copyOfRange(
                pending, from + FrameFormat.HEADER_BYTES, from + FrameFormat.HEADER_BYTES + n);
        number(type, sequence, payload, events);
        from += whole;
      } else {
        events.add(new FrameEvent.Broken(type, sequence));
        from += 2; // not whole: bytes may be missing, and the next frame lie inside
      }
    }
    return events;
  }

  private void number(int type, int sequence, byte[] payload, List<FrameEvent> events) {
    int ahead = expected == UNKNOWN ? 0 : Math.floorMod(sequence - expected, SEQUENCES);
    if (ahead >= SEQUENCES / 2) {
      events.add(new FrameEvent.Repeated(type, sequence));
      return;
    }
    if (ahead > 0) {
      events.add(new FrameEvent.Lost(ahead));
    }
    expected = (sequence + 1) % SEQUENCES;
    events.add(new FrameEvent.Good(type, sequence, payload));
  }

  /** Moves to the next header whose check holds; false while there may be one but not all of it. */
  private boolean find() {
    for (; from < to; from++) {
      if (pending[from] != FrameFormat.SYNC_0) {
        continue;
      }
      if (to - from < FrameFormat.HEADER_BYTES) {
        return false;
      }
      if (isHeader(from)) {
        return true;
      }
    }
    return false;
  }

  private boolean isHeader(int at) {
    return pending[at + 1] == FrameFormat.SYNC_1
        && pending[at + 2] == FrameFormat.VERSION
        && u16(at + 6) <= FrameFormat.MOST_PAYLOAD_BYTES
        && u16(at + 8) == Checks.crc16(pending, at, 8);
  }

  private void append(byte[] chunk, int length) {
    int left = to - from;
    if (pending.length - to < length) {
      byte[] room = left + length > pending.length ? new byte[2 * (left + length)] : pending;
      System.arraycopy(pending, from, room, 0, left);
      pending = room;
      from = 0;
      to = left;
    }
    System.arraycopy(chunk, 0, pending, to, length);
    to += length;
  }

  private int u16(int at) {
    return (pending[at] & 0xFF) | (pending[at + 1] & 0xFF) << 8;
  }

  private int i32(int at) {
    return u16(at) | u16(at + 2) << 16;
  }
}
