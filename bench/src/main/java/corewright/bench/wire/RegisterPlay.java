package corewright.bench.wire;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Link;
import corewright.bench.run.Clock;
import corewright.fixtures.describe.BenchDescription.Connection;
import corewright.fixtures.describe.Dialect;
import corewright.fixtures.describe.Register;
import corewright.fixtures.describe.Samples.Registers;
import corewright.fixtures.describe.Samples.SampledChannel;
import corewright.fixtures.describe.Span;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Asks for every register of a Modbus dialect, each by itself. */
final class RegisterPlay {
  private static final Duration PATIENCE = Duration.ofMillis(300);

  private final Dialect dialect;
  private final Registers form;
  private final RtuLine line;
  private final List<Said> said = new ArrayList<>();

  RegisterPlay(Dialect dialect, Registers form, Link link, Connection connection, Clock clock) {
    this.dialect = dialect;
    this.form = form;
    this.line = new RtuLine(link, connection, form.unit(), PATIENCE, clock);
  }

  List<Said> play() {
    if (!dialect.identity().isEmpty()) {
      identity();
    }
    form.rate().ifPresent(this::rate);
    for (int c = 0; c < form.registers().size(); c++) {
      channel(c);
    }
    return said;
  }

  private void identity() {
    String doing = "Read Device Identification";
    try {
      String answer = line.identity();
      said.add(
          dialect.identifies(answer)
              ? Said.good("/identity", doing, answer)
              : Said.wrong(
                  "/identity",
                  doing,
                  "'" + answer + "' answers, which it is not for",
                  "Correct the pattern, or ask the instrument that it is for."));
    } catch (InstrumentFault fault) {
      said.add(Said.wrong("/identity", doing, fault.found(), fault.remedy()));
    }
  }

  private void rate(int register) {
    int most_Hz = dialect.samples().map(s -> (int) s.most_Hz()).orElse(0);
    String doing = "write " + most_Hz + " to register " + register;
    try {
      line.write(register, most_Hz);
      said.add(Said.good("/modbus/rate", doing, "done"));
    } catch (InstrumentFault fault) {
      said.add(Said.wrong("/modbus/rate", doing, fault.found(), fault.remedy()));
    }
  }

  private void channel(int index) {
    Register register = form.registers().get(index);
    SampledChannel channel = dialect.samples().orElseThrow().channels().get(index);
    String pointer = "/samples/channels/" + index;
    String doing =
        "read %s register %d"
            .formatted(register.function() == 4 ? "input" : "holding", register.address());
    Span span = new Span(register.function(), register.address(), register.type().words());
    try {
      double number = register.number(line.read(span), 0);
      double value = number * channel.scale() + register.offset();
      said.add(
          Double.isNaN(number)
              ? Said.wrong(
                  pointer + "/type",
                  doing,
                  channel.name() + " is not a number",
                  "Correct the type and the order of words and bytes.")
              : Said.good(
                  pointer,
                  doing,
                  String.format(Locale.ROOT, "%s %.3f %s", channel.name(), value, channel.unit())));
    } catch (InstrumentFault fault) {
      said.add(Said.wrong(pointer, doing, fault.found(), fault.remedy()));
    }
  }
}
