package corewright.bench.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.FakeClock;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** A board that streams by itself is told that the station is alive without a frame waiting. */
class FramedDigitizerTest {
  private static final int SOUND = 3;
  private final FakeClock clock = new FakeClock();
  private final Board board = new Board();
  private final FramedDigitizer digitizer = FramedDigitizer.open("digitizer", board, clock);

  /** Answers at once, but to a HEARTBEAT when it is let. */
  private final class Board implements Link {
    private final ByteArrayOutputStream waiting = new ByteArrayOutputStream();
    private int sequence;
    private int heartbeats;
    private int reads;
    private int status = SOUND;
    private boolean answersHeartbeats = true;

    @Override
    public void write(byte[] bytes, Duration patience) {
      int type = bytes[3] & 0xFF;
      if (type == FrameFormat.HEARTBEAT) {
        heartbeats++;
        if (answersHeartbeats) {
          alive();
        }
      } else if (type == FrameFormat.IDENTIFY) {
        send(
            FrameFormat.IDENTITY,
            "MAKER,BOARD,1,1.0;fixture=F;channels=output:V:0.004:0"
                .getBytes(StandardCharsets.UTF_8));
      } else {
        send(FrameFormat.DONE, new byte[] {bytes[3], bytes[4], bytes[5], SOUND, 0});
      }
    }

    void alive() {
      send(FrameFormat.ALIVE, new byte[] {(byte) status, 0});
    }

    void data(long first) {
      ByteBuffer payload = ByteBuffer.allocate(18).order(ByteOrder.LITTLE_ENDIAN);
      payload
          .putLong(first)
          .putShort((short) SOUND)
          .put((byte) 1)
          .put((byte) 0)
          .putShort((short) 1);
      send(FrameFormat.DATA, payload.array());
    }

    private void send(int type, byte[] payload) {
      ByteBuffer frame =
          ByteBuffer.allocate(FrameFormat.HEADER_BYTES + payload.length + FrameFormat.CHECK_BYTES)
              .order(ByteOrder.LITTLE_ENDIAN);
      frame.putShort((short) (FrameFormat.SYNC_0 | FrameFormat.SYNC_1 << 8));
      frame.put((byte) FrameFormat.VERSION);
      frame.put((byte) type).putShort((short) sequence++).putShort((short) payload.length);
      frame.putShort((short) Checks.crc16(frame.array(), 0, 8)).put(payload);
      frame.putInt(Checks.crc32c(frame.array(), 0, frame.position()));
      waiting.writeBytes(frame.array());
    }

    @Override
    public int read(byte[] into, Duration patience) {
      reads++;
      int count = waiting.size();
      System.arraycopy(waiting.toByteArray(), 0, into, 0, count);
      waiting.reset();
      clock.pause(count == 0 ? patience : Duration.ZERO);
      return count;
    }

    @Override
    public String name() {
      return "a line";
    }

    @Override
    public void close() {}
  }

  @Test
  void noFrameWaitsForTheAnswer() {
    digitizer.start(1000, 1);
    board.answersHeartbeats = false;
    int before = board.reads;
    digitizer.alive();
    assertEquals(before, board.reads, "nothing is waited for");
    board.data(0);
    board.alive();
    board.data(1);
    assertEquals(0, digitizer.next(Duration.ofMillis(400)).first());
    assertEquals(1, digitizer.next(Duration.ofMillis(400)).first());
    before = board.reads;
    digitizer.alive();
    assertEquals(before, board.reads, "the answer came with the frames");
    assertEquals(2, board.heartbeats);
  }

  @Test
  void aBoardThatDoesNotAnswerIsNoticedTheNextTime() {
    digitizer.start(1000, 1);
    board.answersHeartbeats = false;
    digitizer.alive();
    InstrumentFault silent = assertThrows(InstrumentFault.class, digitizer::alive);
    assertTrue(silent.doing().contains("alive"), silent.getMessage());
  }

  @Test
  void whatTheFixtureSaysIsTheAnswerToThisQuestionAndNotToAnEarlierOne() {
    digitizer.start(1000, 1);
    digitizer.alive();
    board.status = 0;
    assertFalse(digitizer.heartbeat().relayClosed());
  }

  @Test
  void aCommandThatIsAnsweredSaysAsMuchAsAHeartbeat() {
    digitizer.start(1000, 1);
    digitizer.alive();
    digitizer.relay(true);
    int before = board.reads;
    digitizer.alive();
    assertEquals(before, board.reads);
    digitizer.stop();
    digitizer.alive();
    assertTrue(board.reads > before, "while nothing streams it is waited for");
  }
}
