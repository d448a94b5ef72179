package corewright.bench.wire;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** What the board's payloads say. Each reader refuses what it cannot read with a sentence. */
final class BoardFormat {

  /**
   * Answer to IDENTIFY.
   *
   * @param instrument maker, model, serial, firmware
   */
  record Identity(String instrument, String fixture, List<Channel> channels) {}

  /**
   * Answer to a command.
   *
   * @param type of the frame that was carried out or refused
   * @param sequence of that frame
   */
  record Answer(int type, int sequence) {}

  private BoardFormat() {}

  static Identity identity(byte[] payload) {
    String text = new String(payload, StandardCharsets.UTF_8);
    String[] parts = text.split(";", -1);
    if (parts.length < 3
        || !parts[1].startsWith("fixture=")
        || !parts[2].startsWith("channels=")
        || parts[0].split(",", -1).length != 4) {
      throw new IllegalArgumentException("'" + text + "' is no identity of a board");
    }
    List<Channel> channels = new ArrayList<>();
    for (String channel : parts[2].substring("channels=".length()).split(",", -1)) {
      String[] fields = channel.split(":", -1);
      if (fields.length != 4) {
        throw new IllegalArgumentException("'" + channel + "' is no channel");
      }
      channels.add(channel(fields[0], fields[1], fields[2], fields[3]));
    }
    return new Identity(parts[0], parts[1].substring("fixture=".length()), channels);
  }

  private static Channel channel(String name, String unit, String lsb, String offset) {
    try {
      Channel channel =
          new Channel(name, unit, Double.parseDouble(lsb), Double.parseDouble(offset));
      if (!(channel.lsb() > 0)
          || Double.isInfinite(channel.lsb())
          || !Double.isFinite(channel.offset())) {
        throw new IllegalArgumentException(
            "channel " + name + " has lsb " + lsb + " and offset " + offset);
      }
      return channel;
    } catch (NumberFormatException notANumber) {
      throw new IllegalArgumentException(
          "channel " + name + " has lsb '" + lsb + "' and offset '" + offset + "'", notANumber);
    }
  }

  static Answer answer(byte[] payload) {
    ByteBuffer in = in(payload, 3);
    return new Answer(in.get() & 0xFF, in.getShort() & 0xFFFF);
  }

  static int refusalCode(byte[] payload) {
    return in(payload, 4).get(3) & 0xFF;
  }

  /** Why a command was refused, in the board's words. */
  static String refusal(byte[] payload) {
    int code = refusalCode(payload);
    return new String(payload, 4, payload.length - 4, StandardCharsets.UTF_8)
        + " (code "
        + code
        + ")";
  }

  static Status alive(byte[] payload) {
    return status(in(payload, 2).getShort());
  }

  /**
   * @param brokenBefore goes into the frame as it is
   */
  static Frame data(byte[] payload, int brokenBefore) {
    ByteBuffer in = in(payload, 16);
    long first = in.getLong();
    Status status = status(in.getShort());
    int channels = in.get() & 0xFF;
    in.get();
    int samples = in.getShort() & 0xFFFF;
    in.getShort();
    if (first < 0 || in.remaining() != 2 * channels * samples) {
      throw new IllegalArgumentException(
          "a frame from sample "
              + first
              + " with "
              + channels
              + " channels of "
              + samples
              + " samples has "
              + in.remaining()
              + " bytes of them");
    }
    ShortBuffer codes = in.asShortBuffer();
    short[][] all = new short[channels][samples];
    for (short[] channel : all) {
      codes.get(channel);
    }
    return new Frame(first, status, all, brokenBefore);
  }

  private static Status status(int bits) {
    return new Status(
        (bits & 1) != 0,
        (bits & 2) != 0,
        (bits & 4) != 0,
        (bits & 8) != 0,
        (bits & 16) != 0,
        (bits & 32) != 0);
  }

  private static ByteBuffer in(byte[] payload, int atLeast) {
    if (payload.length < atLeast) {
      throw new IllegalArgumentException("a payload of " + payload.length + " bytes is too short");
    }
    return ByteBuffer.wrap(payload).order(ByteOrder.LITTLE_ENDIAN);
  }
}
