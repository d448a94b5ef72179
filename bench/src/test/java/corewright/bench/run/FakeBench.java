package corewright.bench.run;

import corewright.bench.port.Digitizer;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Interlock;
import corewright.bench.port.Load;
import corewright.bench.port.Meter;
import corewright.bench.port.Relay;
import corewright.bench.port.Source;
import corewright.bench.port.Switch;
import corewright.bench.port.Thermometer;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/** Instruments without bytes: what they are told acts on a {@link FakeUnit} at once. */
final class FakeBench {
  static final List<Digitizer.Channel> CHANNELS =
      List.of(
          new Digitizer.Channel("input", "V", 0.001, 0),
          new Digitizer.Channel("output", "V", 0.004, 0),
          new Digitizer.Channel("load", "A", 0.001, 0),
          new Digitizer.Channel("inputCurrent", "A", 0.002, 0));

  final FakeUnit unit = new FakeUnit();
  final FakeClock clock = new FakeClock();
  final List<String> told = new ArrayList<>();

  /** Called with each command before it acts; may throw. */
  Consumer<String> before = command -> {};

  /** May change what is sampled. */
  UnaryOperator<Digitizer.Frame> frames = frame -> frame;

  /** Host seconds that pass for each second of samples. */
  double slowness = 0.1;

  /** Whether the source can be asked if it is on. */
  boolean sourceSays = true;

  /** Whether the digitizer's time stands still while nobody asks for a frame. */
  boolean waits = true;

  boolean hasThermometer = true;
  boolean hasMeter = true;

  /** What the meter reads of a voltage. */
  DoubleUnaryOperator meterReads = v -> v;

  String fixture = "EF-SD48";
  String model = "EMULATED-THING";
  private int rate_Hz;
  private int samples;
  private long index;

  BenchInstruments instruments() {
    FakeDigitizer board = new FakeDigitizer();
    return new BenchInstruments(
        new FakeLoad(),
        new FakeSource(),
        board,
        board,
        new FakeSwitch(),
        new FakeChain(),
        hasThermometer ? Optional.of(new FakeThermometer()) : Optional.empty(),
        hasMeter ? Optional.of(new FakeMeter()) : Optional.empty());
  }

  private void tell(String command) {
    told.add(command);
    before.accept(command);
  }

  private static void reaches(String role, double level, double most) {
    if (!(level >= 0 && level <= most)) {
      throw new InstrumentFault(role, "set", level + " is out of reach", "Ask for less.");
    }
  }

  private String identity(String role) {
    tell(role + " identity");
    return "COREWRIGHT," + model + "," + role + ",1";
  }

  int most_Hz = Integer.MAX_VALUE;
  boolean pulses = true;
  boolean swings = true;
  boolean swinging;

  private Digitizer.Status status() {
    unit.relayClosed &= unit.chainWhole;
    return new Digitizer.Status(
        unit.chainWhole, unit.relayClosed, unit.discharging, false, false, unit.heldOn);
  }

  private final class FakeLoad implements Load {
    @Override
    public String role() {
      return "load";
    }

    @Override
    public String identity() {
      return FakeBench.this.identity("load");
    }

    @Override
    public void set(double current_A) {
      tell("load set " + current_A);
      reaches("load", current_A, 40);
      unit.load_A = current_A;
    }

    @Override
    public void input(boolean on) {
      tell("load input " + on);
      unit.loadOn = on;
    }

    @Override
    public boolean canPulse() {
      return pulses;
    }

    @Override
    public void pulse(Pulses p) {
      tell("load pulse " + p.high_A());
      reaches("load", p.high_A(), 40);
      unit.load_A = p.low_A() + (p.high_A() - p.low_A()) * p.width_s() / p.period_s();
    }

    @Override
    public void steady() {
      tell("load steady");
    }

    @Override
    public Measurement current() {
      return new Measurement(unit.loadOn ? unit.load_A : 0, 0.001, Unit.AMPERE);
    }

    @Override
    public void off() {
      tell("load off");
      unit.loadOn = false;
    }

    @Override
    public void close() {}
  }

  private final class FakeSource implements Source {
    @Override
    public String role() {
      return "source";
    }

    @Override
    public String identity() {
      return FakeBench.this.identity("source");
    }

    @Override
    public void protect(double over_V, double over_A) {
      tell("source protect " + over_V + " " + over_A);
    }

    @Override
    public void set(double voltage_V, double limit_A) {
      tell("source set");
      reaches("source", voltage_V, 40);
      unit.source_V = voltage_V;
      unit.limit_A = limit_A;
    }

    @Override
    public void output(boolean on) {
      tell("source output " + on);
      unit.sourceOn = on;
    }

    @Override
    public boolean canSwing() {
      return swings;
    }

    @Override
    public void swing(Swing s) {
      tell("source swing " + s.swing_Vpp());
      reaches("source", s.high_V(), 40);
      swinging = true;
    }

    @Override
    public void steady() {
      tell("source steady");
      swinging = false;
    }

    @Override
    public Optional<Boolean> isOn() {
      return sourceSays ? Optional.of(unit.sourceOn) : Optional.empty();
    }

    @Override
    public Measurement voltage() {
      tell("source voltage?");
      return new Measurement(unit.sourceOn ? unit.source_V : 0, 0.01, Unit.VOLT);
    }

    @Override
    public Measurement current() {
      return new Measurement(unit.input_A, 0.01, Unit.AMPERE);
    }

    @Override
    public void off() {
      tell("source off");
      swinging = false;
      unit.sourceOn = unit.sourceSticks && unit.sourceOn;
    }

    @Override
    public void close() {}
  }

  private final class FakeSwitch implements Switch {
    @Override
    public String role() {
      return "switch";
    }

    @Override
    public String identity() {
      return FakeBench.this.identity("switch");
    }

    @Override
    public void discharge(boolean connected) {
      tell("switch discharge " + connected);
      unit.discharging = connected || unit.heldOn;
    }

    @Override
    public boolean discharging() {
      tell("switch discharging?");
      return unit.discharging;
    }

    @Override
    public void off() {
      tell("switch off");
      unit.discharging = true;
    }

    @Override
    public void close() {}
  }

  private final class FakeChain implements Interlock {
    @Override
    public String role() {
      return "interlock";
    }

    @Override
    public String identity() {
      return FakeBench.this.identity("interlock");
    }

    @Override
    public boolean whole() {
      tell("interlock whole?");
      return unit.chainWhole;
    }

    @Override
    public void off() {}

    @Override
    public void close() {}
  }

  private final class FakeThermometer implements Thermometer {
    @Override
    public String role() {
      return "thermometer";
    }

    @Override
    public String identity() {
      return FakeBench.this.identity("thermometer");
    }

    @Override
    public Measurement temperature() {
      before.accept("thermometer temperature?");
      return new Measurement(unit.case_C, 0.75, Unit.CELSIUS);
    }

    @Override
    public void off() {}

    @Override
    public void close() {}
  }

  private final class FakeMeter implements Meter {
    private Terminals at = Terminals.INPUT;

    @Override
    public String role() {
      return "meter";
    }

    @Override
    public String identity() {
      return FakeBench.this.identity("meter");
    }

    @Override
    public void to(Terminals terminals) {
      at = terminals;
    }

    @Override
    public Measurement voltage() {
      double volts = at == Terminals.INPUT ? unit.input_V : unit.capacitor_V;
      return new Measurement(meterReads.applyAsDouble(volts), 0.004, Unit.VOLT);
    }

    @Override
    public Optional<Measurement> resistance() {
      before.accept("meter resistance?");
      double ohm = at == Terminals.INPUT ? unit.deadInput_ohm : unit.deadOutput_ohm;
      return Double.isInfinite(ohm)
          ? Optional.empty()
          : Optional.of(new Measurement(ohm, 0.01 * ohm + 0.2, Unit.OHM));
    }

    @Override
    public Optional<Measurement> diode() {
      return Optional.of(new Measurement(unit.diode_V, 0.003, Unit.VOLT));
    }

    @Override
    public void off() {}

    @Override
    public void close() {}
  }

  private final class FakeDigitizer implements Digitizer, Relay {
    @Override
    public String role() {
      return "digitizer";
    }

    @Override
    public String identity() {
      return FakeBench.this.identity("digitizer");
    }

    @Override
    public List<Channel> channels() {
      return CHANNELS;
    }

    @Override
    public Optional<String> fixture() {
      return Optional.of(fixture);
    }

    @Override
    public int most_Hz() {
      return most_Hz;
    }

    @Override
    public double bytesPerSecond(int rate, int samplesPerFrame) {
      return new Framing(rate, samplesPerFrame).bytesPerSecond(4);
    }

    @Override
    public void start(int rate, int samplesPerFrame) {
      tell("digitizer start " + rate);
      rate_Hz = rate;
      samples = samplesPerFrame;
      index = 0;
    }

    @Override
    public Frame next(Duration patience) {
      before.accept("digitizer next");
      short[][] codes = new short[4][samples];
      for (int i = 0; i < samples; i++) {
        unit.pass(1.0 / rate_Hz);
        codes[0][i] = code(unit.input_V / 0.001);
        codes[1][i] = code(unit.capacitor_V / 0.004);
        codes[2][i] = code((unit.loadOn && unit.capacitor_V > 0.5 ? unit.load_A : 0) / 0.001);
        codes[3][i] = code(unit.input_A / 0.002);
      }
      clock.pass(slowness * samples / rate_Hz);
      Frame frame = new Frame(index, status(), codes, 0);
      index += samples;
      return frames.apply(frame);
    }

    @Override
    public boolean waits() {
      return waits;
    }

    @Override
    public void stop() {
      tell("digitizer stop");
    }

    @Override
    public void relay(boolean closed) {
      tell("digitizer relay " + closed);
      unit.relayClosed = closed && unit.chainWhole;
      unit.heldOn &= !unit.relayClosed;
    }

    @Override
    public Status heartbeat() {
      before.accept("digitizer heartbeat");
      return status();
    }

    @Override
    public void off() {
      tell("digitizer off");
      unit.relayClosed = false;
    }

    @Override
    public void close() {}
  }

  private static short code(double value) {
    return (short) Math.max(-32768, Math.min(32767, Math.round(value)));
  }
}
