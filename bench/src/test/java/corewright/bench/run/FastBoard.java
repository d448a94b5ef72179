package corewright.bench.run;

import corewright.fixtures.emulate.line.PtyLine;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.zip.CRC32C;

/**
 * A board that streams three channels as fast as it is told to, or as the line takes them. Its
 * frames are written from WIRE.md and share no code with the drivers. Samples that wait for the
 * line for longer than its memory lasts are lost, as in a real board, and it says so.
 */
final class FastBoard implements Runnable {
  static final String IDENTITY =
      "FAST,BOARD,1,1.0;fixture=EF-SD48;"
          + "channels=input:V:0.001:0,output:V:0.004:0,load:A:0.001:0";
  static final int INPUT = 12_500;
  static final int OUTPUT = 12_000;
  static final int LOAD = 2_000;

  /** 60 V; the family sd48 ends a run above 56 V. */
  private static final int TOO_HIGH = 15_000;

  /** Chain whole, relay closed. */
  private static final int SOUND = 3;

  private static final int LOST = 16;
  private static final int HEAD = 10;
  private static final int DATA_HEAD = 16;

  /**
   * How it streams.
   *
   * @param paced at the rate that START names; else as fast as the line takes frames
   * @param memory_s how long samples may wait
   * @param framesOfHold after so many frames the load changes between 0 and 2 A
   * @param tripAt frame since START whose output is too high; −1 for none
   */
  record Manner(boolean paced, double memory_s, int framesOfHold, int tripAt) {}

  private final PtyLine line;
  private final Manner manner;
  private final byte[] in = new byte[4096];
  private final Deque<byte[]> answers = new ArrayDeque<>();
  private final List<Long> reactions_ns = new ArrayList<>();
  private volatile boolean closing;
  private long lost;

  private boolean streaming;
  private int rate_Hz;
  private int samples;
  private byte[] idle = {};
  private byte[] loaded = {};
  private byte[] tooHigh = {};
  private long started;
  private long frames;
  private long tripped;
  private int sequence;
  private boolean lostBefore;

  private byte[] out = {};
  private int at;
  private boolean outTrips;

  FastBoard(Manner manner) throws IOException {
    this.manner = manner;
    line = PtyLine.open();
  }

  String path() {
    return line.path();
  }

  /** Frames whose samples were lost for want of memory. Read it once the board has ended. */
  long lost() {
    return lost;
  }

  /**
   * From the last byte of a frame that shows a fault lying in the host's buffer, until the command
   * to open the relay was here, ns. Read it once the board has ended.
   */
  List<Long> reactions_ns() {
    return reactions_ns;
  }

  void end() {
    closing = true;
  }

  @Override
  public void run() {
    try (line) {
      while (!closing) {
        int count = line.read(in, isBusy() ? 0 : 1);
        if (count > 0) {
          received(count);
        }
        if (isBusy()) {
          write();
        }
      }
    }
  }

  private boolean isBusy() {
    return at < out.length || !answers.isEmpty() || streaming && isDue(frames);
  }

  private boolean isDue(long frame) {
    return !manner.paced() || taken() >= (frame + 1) * samples;
  }

  /** Samples since START. */
  private double taken() {
    return (System.nanoTime() - started) * 1e-9 * rate_Hz;
  }

  private void write() {
    if (at == out.length) {
      at = 0;
      outTrips = answers.isEmpty() && frames == manner.tripAt();
      out = answers.isEmpty() ? data() : answers.remove();
    }
    at += line.write(out, at, out.length, 1);
    if (at == out.length && outTrips) {
      tripped = System.nanoTime();
      outTrips = false;
    }
  }

  private byte[] data() {
    double behind_s = taken() / rate_Hz - (double) frames * samples / rate_Hz;
    if (manner.paced() && behind_s > manner.memory_s()) {
      long gone = (long) (behind_s * rate_Hz / samples) - 1;
      lost += gone;
      frames += gone;
      lostBefore = gone > 0;
    }
    byte[] frame =
        frames == manner.tripAt()
            ? tooHigh
            : frames / manner.framesOfHold() % 2 == 0 ? idle : loaded;
    ByteBuffer fields = ByteBuffer.wrap(frame).order(ByteOrder.LITTLE_ENDIAN);
    fields.putLong(HEAD, frames * samples);
    fields.putShort(HEAD + 8, (short) (lostBefore ? SOUND | LOST : SOUND));
    lostBefore = false;
    frames++;
    return seal(fields, sequence++);
  }

  private void received(int count) {
    ByteBuffer fields = ByteBuffer.wrap(in, 0, count).order(ByteOrder.LITTLE_ENDIAN);
    for (int from = 0; from + HEAD <= count; ) { // a command is short and comes in one piece
      int type = in[from + 3] & 0xFF;
      carryOut(type, fields.getShort(from + 4), fields, from + HEAD);
      from += HEAD + fields.getShort(from + 6) + 4;
    }
  }

  private void carryOut(int type, short number, ByteBuffer fields, int payload) {
    switch (type) {
      case 0x81 -> answers.add(frame(0x01, sequence++, IDENTITY.getBytes()));
      case 0x85 -> answers.add(frame(0x05, sequence++, new byte[] {SOUND, 0}));
      default -> {
        if (type == 0x82) {
          start(fields.getInt(payload), fields.getShort(payload + 4));
        } else if (type == 0x84) {
          streaming = false;
        } else if (type == 0x86 && fields.get(payload) == 0 && tripped != 0) {
          reactions_ns.add(System.nanoTime() - tripped);
          tripped = 0;
        }
        byte[] done = {(byte) type, (byte) number, (byte) (number >> 8), SOUND, 0};
        answers.add(frame(0x02, sequence++, done));
      }
    }
  }

  private void start(int rate, int samplesOfFrame) {
    rate_Hz = rate;
    samples = samplesOfFrame;
    idle = codes(OUTPUT, 0);
    loaded = codes(OUTPUT, LOAD);
    tooHigh = codes(TOO_HIGH, LOAD);
    frames = 0;
    tripped = 0;
    streaming = true;
    started = System.nanoTime();
  }

  private byte[] codes(int output, int load) {
    ByteBuffer payload = ByteBuffer.allocate(DATA_HEAD + 6 * samples);
    payload.order(ByteOrder.LITTLE_ENDIAN).put(10, (byte) 3).putShort(12, (short) samples);
    payload.position(DATA_HEAD);
    for (int level : new int[] {INPUT, output, load}) {
      for (int i = 0; i < samples; i++) {
        payload.putShort((short) (level + (level == 0 ? 0 : i % 3 - 1)));
      }
    }
    return frame(0x04, 0, payload.array());
  }

  /** A frame of either direction. */
  static byte[] frame(int type, int number, byte[] payload) {
    ByteBuffer fields =
        ByteBuffer.allocate(HEAD + payload.length + 4).order(ByteOrder.LITTLE_ENDIAN);
    fields.putShort((short) 0x5743).put((byte) 1).put((byte) type);
    fields.putShort(6, (short) payload.length).position(HEAD).put(payload);
    return seal(fields, number);
  }

  private static byte[] seal(ByteBuffer fields, int number) {
    byte[] bytes = fields.array();
    fields.putShort(4, (short) number);
    int head = 0xFFFF;
    for (int i = 0; i < 8; i++) {
      head ^= (bytes[i] & 0xFF) << 8;
      for (int bit = 0; bit < 8; bit++) {
        head = head << 1 ^ ((head & 0x8000) != 0 ? 0x1021 : 0);
      }
    }
    fields.putShort(8, (short) head);
    CRC32C whole = new CRC32C();
    whole.update(bytes, 0, bytes.length - 4);
    fields.putInt(bytes.length - 4, (int) whole.getValue());
    return bytes;
  }

  /**
   * A board in a process of its own: prints its port, streams until its input ends, then prints the
   * frames that it lost and its reactions.
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    FastBoard board =
        new FastBoard(
            new Manner(
                Boolean.parseBoolean(args[0]),
                Double.parseDouble(args[1]),
                Integer.parseInt(args[2]),
                Integer.parseInt(args[3])));
    Thread thread = new Thread(board, "board");
    thread.start();
    System.out.println(board.path());
    while (System.in.read() >= 0) {} // until the station ends
    board.end();
    thread.join();
    System.out.println(board.lost());
    board.reactions_ns().forEach(System.out::println);
  }
}
