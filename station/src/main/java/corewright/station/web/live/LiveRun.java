package corewright.station.web.live;

import corewright.bench.hand.Hands;
import corewright.bench.port.Digitizer;
import corewright.bench.port.Digitizer.Channel;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.run.Clock;
import corewright.bench.run.GuardFinding;
import corewright.bench.run.RunListener;
import corewright.bench.run.Stop;
import corewright.measures.Measurement;
import corewright.profiles.Step;
import corewright.station.work.Outcome;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;

/**
 * One run as people watch it. The engine's thread calls what {@link RunListener} asks for and only
 * writes; whoever looks reads what is there and never makes it wait.
 */
final class LiveRun implements RunListener {
  private static final double LIVE = 2;

  private final Start start;
  private final Course course;
  private final Clock clock;
  private final int number;
  private final Stop stop = new Stop();
  private final Columns columns;
  private final Decimator decimator;
  private final HoldWatch hold;
  private final List<Begun> begun = new CopyOnWriteArrayList<>();
  private final CountDownLatch over = new CountDownLatch(1);

  private volatile List<GuardFinding> guards = List.of();
  private volatile Optional<Seen> seen = Optional.empty();
  private volatile Optional<Double> case_C = Optional.empty();
  private volatile Optional<RunEnd> end = Optional.empty();
  private volatile Optional<RunRecord> record = Optional.empty();
  private volatile Optional<Outcome> outcome = Optional.empty();
  private volatile String failure = "";
  private volatile String asked = "";
  private volatile Optional<Path> wire = Optional.empty();

  private List<Channel> channels = List.of();
  private int output = -1;
  private int input = -1;
  private volatile double highest_V;
  private Optional<Seen> last = Optional.empty();

  /**
   * @param number of this run among those of this bench since the program started
   */
  LiveRun(Start start, Course course, int number, Clock clock) {
    this.start = start;
    this.course = course;
    this.number = number;
    this.clock = clock;
    this.columns = new Columns(course.column_ms());
    this.decimator = new Decimator(columns);
    this.hold = new HoldWatch(course);
  }

  /**
   * A step that has begun.
   *
   * @param at_s when, s since sampling began
   */
  record Begun(int index, double at_s) {}

  @Override
  public void guarded(List<GuardFinding> findings) {
    guards = List.copyOf(findings);
  }

  @Override
  public void sampling(List<Channel> now, double rate) {
    int rate_Hz = (int) Math.round(rate);
    channels = now;
    List<String> names = now.stream().map(Channel::name).toList();
    output = names.indexOf("output");
    input = names.indexOf(course.feed());
    decimator.begin(now, rate_Hz, course.feed());
    hold.sampling(now, rate_Hz);
  }

  @Override
  public void step(Step step, int index, int count) {
    asked = "";
    hold.step(step);
    begun.add(new Begun(index, columns.at_s()));
  }

  @Override
  public void frame(Digitizer.Frame frame) {
    decimator.add(frame);
    hold.frame(frame);
    double volts = highest(frame, output);
    highest_V = Math.max(highest_V, volts);
    last =
        Optional.of(
            new Seen(
                clock.nanos(),
                columns.at_s(),
                0,
                volts,
                highest(frame, input),
                frame.status().interlockWhole(),
                hold.mean(),
                hold.lowest()));
  }

  @Override
  public void progress(double done_s, double total_s) {
    seen =
        last.map(
            s ->
                new Seen(
                    s.atNanos(),
                    done_s,
                    total_s,
                    s.output_V(),
                    s.input_V(),
                    s.chainWhole(),
                    s.mean(),
                    s.lowest_V()));
  }

  @Override
  public void caseAt(Measurement temperature) {
    case_C = Optional.of(temperature.value());
  }

  @Override
  public void ended(RunEnd how) {
    decimator.close();
    end = Optional.of(how);
  }

  private double highest(Digitizer.Frame frame, int channel) {
    if (channel < 0) {
      return 0;
    }
    int lowest = 0;
    int highest = 0;
    for (short code : frame.codes()[channel]) {
      lowest = Math.min(lowest, code);
      highest = Math.max(highest, code);
    }
    Channel c = channels.get(channel);
    return Math.max(
        Math.abs(c.offset() + c.lsb() * lowest), Math.abs(c.offset() + c.lsb() * highest));
  }

  /** The driver's hands: what is asked of them is shown until the next step begins. */
  Hands hands() {
    return new Hands() {
      @Override
      public String name() {
        return start.driver();
      }

      @Override
      public void please(String what) {
        asked = what;
      }
    };
  }

  /** What somebody is to do by hand now; empty: nothing. */
  String asked() {
    return asked;
  }

  /** The run is in the record. */
  void kept(RunRecord run) {
    record = Optional.of(run);
  }

  /** What went over its wires is kept. */
  void wire(Path file) {
    wire = Optional.of(file);
  }

  /** Where what went over its wires is kept; empty: nobody asked for it. */
  Optional<Path> wire() {
    return wire;
  }

  void concluded(Outcome what) {
    outcome = Optional.of(what);
  }

  /** The bench could not be opened, or the record not be kept. */
  void failed(String why) {
    failure = why;
  }

  /** Nothing of it goes on any more. */
  void over() {
    over.countDown();
  }

  /** Opened when it is over: tests and the end of the program wait for it. */
  CountDownLatch latch() {
    return over;
  }

  boolean isOver() {
    return over.getCount() == 0;
  }

  /**
   * Whether it is proved that the unit holds nothing. A profile that ran to its end has proved it;
   * otherwise the channel must have been seen live in this run, then under the safe level, and all
   * of the safe state confirmed.
   */
  boolean isProvedDead() {
    double safe_V = course.family().discharge().safe_V();
    boolean completed = end.filter(e -> e.kind() == RunEnd.Kind.COMPLETED).isPresent();
    boolean confirmed = record.filter(r -> r.troubles().isEmpty()).isPresent();
    boolean proved =
        record.isEmpty() ? completed : confirmed && (completed || highest_V >= LIVE * safe_V);
    return proved && seen.filter(s -> s.output_V() < safe_V).isPresent();
  }

  /** Whether anything was switched on in it. */
  boolean powered() {
    return begun.stream().anyMatch(b -> course.step(b.index()).kind() != Step.Kind.DEAD_CHECK);
  }

  Start start() {
    return start;
  }

  Course course() {
    return course;
  }

  int number() {
    return number;
  }

  Stop stop() {
    return stop;
  }

  Columns columns() {
    return columns;
  }

  List<Begun> begun() {
    return List.copyOf(begun);
  }

  List<GuardFinding> guards() {
    return guards;
  }

  Optional<Seen> seen() {
    return seen;
  }

  Optional<Double> case_C() {
    return case_C;
  }

  Optional<RunEnd> ended() {
    return end;
  }

  Optional<RunRecord> record() {
    return record;
  }

  Optional<Outcome> outcome() {
    return outcome;
  }

  String failure() {
    return failure;
  }
}
