package corewright.bench.wire;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Identities;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import corewright.bench.wire.Gathered.Sample;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.describe.Register;
import corewright.fixtures.describe.Samples;
import corewright.fixtures.describe.Samples.Registers;
import corewright.fixtures.describe.Samples.SampledChannel;
import corewright.fixtures.describe.Span;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Samples that are read out of registers, all channels each time one is due. A frame that arrives
 * broken is a sample that is missing; a refusal or silence ends the run.
 */
final class RegisterScans implements Scans {
  private final RtuLine line;
  private final Dialect dialect;
  private final Samples samples;
  private final Registers form;
  private final List<Span> spans;
  private final boolean waits;
  private final Pace pace;
  private final Gathered gathered;

  private RegisterScans(
      RtuLine line, Dialect dialect, Samples samples, Registers form, Clock clock) {
    this.line = line;
    this.dialect = dialect;
    this.samples = samples;
    this.form = form;
    this.spans = form.spans();
    this.waits = Identities.isEmulated(identity());
    this.pace = new Pace(clock, waits);
    this.gathered = new Gathered(form.registers().size());
  }

  /**
   * Asks the server who it is.
   *
   * @throws corewright.bench.port.InstrumentFault if it does not answer, or is another
   */
  static RegisterScans open(
      Link link,
      Connection connection,
      Dialect dialect,
      Samples samples,
      Registers form,
      Clock clock) {
    Duration patience = Duration.ofNanos((long) (dialect.line().patience_s() * 1e9));
    RtuLine line = new RtuLine(link, connection, form.unit(), patience, clock);
    return new RegisterScans(line, dialect, samples, form, clock);
  }

  /** A server that cannot say who it is must at least have the registers that are wanted. */
  @Override
  public String identity() {
    if (dialect.identity().isEmpty()) {
      spans.forEach(line::read);
      return "NOT SAID," + dialect.id() + " at address " + form.unit() + ",0,0";
    }
    String answer = line.identity();
    if (!dialect.identifies(answer)) {
      throw line.fault(
          "reading its identification",
          "'"
              + Texts.printable(answer)
              + "' answers, which dialect "
              + dialect.id()
              + " is not for",
          "Plug in the right instrument, or name its dialect in the bench description.");
    }
    return answer;
  }

  @Override
  public List<Channel> channels() {
    List<Channel> channels = new ArrayList<>();
    for (int c = 0; c < form.registers().size(); c++) {
      SampledChannel s = samples.channels().get(c);
      channels.add(new Channel(s.name(), s.unit(), s.lsb(), form.registers().get(c).offset()));
    }
    return channels;
  }

  @Override
  public boolean waits() {
    return waits;
  }

  @Override
  public void start(int rate_Hz, int wanted) {
    form.rate().ifPresent(register -> line.write(register, rate_Hz));
    gathered.start(wanted);
    pace.start(rate_Hz);
  }

  @Override
  public Batch next(Duration patience) {
    return gathered
        .next(this::take)
        .orElseThrow(() -> new IllegalStateException("a register is read or a fault"));
  }

  private Optional<Sample> take() {
    while (true) {
      long at = pace.due();
      try {
        return Optional.of(new Sample(at, codes()));
      } catch (BrokenAnswer broken) {
        if (gathered.isTooMuch()) {
          throw broken;
        }
      }
    }
  }

  private short[] codes() {
    short[] codes = new short[form.registers().size()];
    for (Span span : spans) {
      int[] words = line.read(span);
      for (int c = 0; c < codes.length; c++) {
        Register register = form.registers().get(c);
        if (span.holds(register)) {
          codes[c] = code(c, register.number(words, register.address() - span.address()));
        }
      }
    }
    return codes;
  }

  private short code(int channel, double number) {
    SampledChannel c = samples.channels().get(channel);
    Register register = form.registers().get(channel);
    if (Double.isNaN(number)) {
      throw line.fault(
          "reading channel " + c.name(),
          "it is not a number",
          "Check type and word order in the dialect, and the channel's sensor.");
    }
    boolean rail =
        register.type() == Register.Type.INT16
            && (number == Short.MAX_VALUE || number == Short.MIN_VALUE);
    return rail || register.over().contains(number)
        ? Quantized.code(number * c.scale() < 0 ? -9.9e37 : 9.9e37, c.lsb())
        : Quantized.code(number * c.scale(), c.lsb());
  }

  /** Its registers are renewed whether they are read or not. */
  @Override
  public void stop() {}

  @Override
  public void off() {}

  @Override
  public void close() {
    line.close();
  }
}
