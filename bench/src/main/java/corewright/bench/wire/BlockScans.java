package corewright.bench.wire;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Identities;
import corewright.fixtures.describe.Samples;
import corewright.fixtures.describe.Samples.Block;
import corewright.fixtures.describe.Samples.SampledChannel;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/**
 * Samples that come as blocks of bytes, one for each question. A block carries no check: its
 * length, its end and the index of its first sample are what can be held against.
 */
final class BlockScans implements Scans {
  private final ScpiSession session;
  private final Samples samples;
  private final Block form;
  private final boolean waits;
  private final List<Channel> channels;
  private int perBatch = 1;
  private long end;

  BlockScans(ScpiSession session, Samples samples, Block form) {
    this.session = session;
    this.samples = samples;
    this.form = form;
    this.waits = Identities.isEmulated(session.identity());
    this.channels = samples.channels().stream().map(this::channel).toList();
  }

  private Channel channel(SampledChannel c) {
    double lsb = c.askLsb().isEmpty() ? c.lsb() : number(c.askLsb()) * c.scale();
    double offset = c.askOffset().isEmpty() ? 0 : number(c.askOffset()) * c.scale();
    if (!(lsb > 0) || Double.isInfinite(lsb) || !Double.isFinite(offset)) {
      throw session.fault(
          "asking for the scale",
          "channel " + c.name() + " has steps of " + lsb + " about " + offset,
          "Correct the dialect's questions for it.");
    }
    return new Channel(c.name(), c.unit(), lsb, offset);
  }

  private double number(String message) {
    String answer = session.text(message).strip();
    try {
      return Double.parseDouble(answer);
    } catch (NumberFormatException notANumber) {
      throw session.fault(
          message,
          "the answer '" + Texts.printable(answer) + "' is not a number",
          "Check the line rate, and the dialect against the instrument's manual.");
    }
  }

  @Override
  public String identity() {
    return session.identity();
  }

  @Override
  public List<Channel> channels() {
    return channels;
  }

  @Override
  public boolean waits() {
    return waits;
  }

  @Override
  public void start(int rate_Hz, int wanted) {
    perBatch = wanted;
    end = 0;
    session.act("start", Map.of("rate_Hz", (double) rate_Hz, "samples", (double) wanted));
  }

  @Override
  public Batch next(Duration patience) {
    int scan = channels.size() * form.bytes();
    byte[] bytes = session.block(samples.ask(), perBatch * scan);
    if (bytes.length == 0 || bytes.length % scan != 0) {
      throw session.fault(
          samples.ask(),
          "a block of " + bytes.length + " bytes holds no whole samples of " + scan + " bytes",
          "Check the format and the channels in the dialect.");
    }
    long first = first();
    short[][] codes = codes(bytes, bytes.length / scan);
    end = first + codes[0].length;
    return new Batch(first, codes, 0);
  }

  private long first() {
    if (!samples.first().isEmpty()) {
      return (long) number(samples.first());
    }
    List<String> refusals = session.refusals();
    if (!refusals.isEmpty()) {
      throw session.fault(
          samples.ask(),
          "it says " + Texts.printable(String.join(" and ", refusals)),
          "Lower the sample rate, or use a faster line.");
    }
    return end;
  }

  private short[][] codes(byte[] bytes, int count) {
    ByteBuffer in =
        ByteBuffer.wrap(bytes)
            .order(form.swapped() ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    short[][] codes = new short[channels.size()][count];
    for (int i = 0; i < count; i++) {
      for (int c = 0; c < codes.length; c++) {
        codes[c][i] = form.real() ? real(in.getFloat(), c) : in.getShort();
      }
    }
    return codes;
  }

  private short real(float value, int channel) {
    if (Float.isNaN(value)) {
      throw session.fault(
          samples.ask(),
          "channel " + channels.get(channel).name() + " is not a number",
          "Check the byte order in the dialect, and the channel's range.");
    }
    double scale = samples.channels().get(channel).scale();
    return Quantized.code(value * scale, channels.get(channel).lsb());
  }

  @Override
  public void stop() {
    session.act("stop", Map.of());
  }

  @Override
  public void off() {
    stop();
  }

  @Override
  public void close() {
    session.close();
  }
}
