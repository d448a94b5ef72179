package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyBoolean;
import static org.mockito.ArgumentMatchers.anyDouble;
import static org.mockito.ArgumentMatchers.anyInt;
import static org.mockito.Mockito.doThrow;
import static org.mockito.Mockito.inOrder;
import static org.mockito.Mockito.spy;

import corewright.bench.port.Digitizer;
import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Interlock;
import corewright.bench.port.Load;
import corewright.bench.port.Meter;
import corewright.bench.port.Relay;
import corewright.bench.port.Source;
import corewright.bench.port.Switch;
import corewright.bench.port.Thermometer;
import corewright.bench.record.RunEnd;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.mockito.InOrder;

/** The order of the calls is the behaviour: what is commanded when each call fails. */
class OrderOfCallsTest {
  private static final InstrumentFault DEAD =
      new InstrumentFault("it", "doing", "found nothing", "Look at it.");

  @TempDir Path folder;

  /** Spies on a bench that works. */
  private static final class Spied {
    final FakeBench bench = new FakeBench();
    final Load load;
    final Source source;
    final Digitizer digitizer;
    final Relay relay;
    final Switch discharge;
    final Interlock interlock;
    final Thermometer thermometer;
    final Meter meter;

    Spied() {
      BenchInstruments fake = bench.instruments();
      load = spy(fake.load());
      source = spy(fake.source());
      digitizer = spy(fake.digitizer());
      relay = (Relay) digitizer;
      discharge = spy(fake.discharge());
      interlock = spy(fake.interlock());
      thermometer = spy(fake.thermometer().orElseThrow());
      meter = spy(fake.meter().orElseThrow());
    }

    BenchInstruments all() {
      return new BenchInstruments(
          load,
          source,
          digitizer,
          relay,
          discharge,
          interlock,
          Optional.of(thermometer),
          Optional.of(meter));
    }

    InOrder order() {
      return inOrder(load, source, digitizer, discharge, interlock);
    }
  }

  /** One call that fails. */
  record Failing(String name, Consumer<Spied> fail) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Failing> calls() {
    return Stream.of(
        new Failing("load identity", s -> doThrow(DEAD).when(s.load).identity()),
        new Failing("digitizer identity", s -> doThrow(DEAD).when(s.digitizer).identity()),
        new Failing("interlock whole?", s -> doThrow(DEAD).when(s.interlock).whole()),
        new Failing("discharging?", s -> doThrow(DEAD).when(s.discharge).discharging()),
        new Failing("protect", s -> doThrow(DEAD).when(s.source).protect(anyDouble(), anyDouble())),
        new Failing("start", s -> doThrow(DEAD).when(s.digitizer).start(anyInt(), anyInt())),
        new Failing("next", s -> doThrow(DEAD).when(s.digitizer).next(any())),
        new Failing("lift discharge", s -> doThrow(DEAD).when(s.discharge).discharge(false)),
        new Failing("source set", s -> doThrow(DEAD).when(s.source).set(anyDouble(), anyDouble())),
        new Failing("relay", s -> doThrow(DEAD).when(s.relay).relay(true)),
        new Failing("source output", s -> doThrow(DEAD).when(s.source).output(true)),
        new Failing("load set", s -> doThrow(DEAD).when(s.load).set(anyDouble())),
        new Failing("load input", s -> doThrow(DEAD).when(s.load).input(anyBoolean())),
        new Failing("heartbeat", s -> doThrow(DEAD).when(s.relay).heartbeat()),
        new Failing("thermometer", s -> doThrow(DEAD).when(s.thermometer).temperature()),
        new Failing("meter's leads", s -> doThrow(DEAD).when(s.meter).to(any())),
        new Failing("meter's ohms", s -> doThrow(DEAD).when(s.meter).resistance()),
        new Failing("meter's volts", s -> doThrow(DEAD).when(s.meter).voltage()),
        new Failing("source off", s -> doThrow(DEAD).when(s.source).off()),
        new Failing("discharge on", s -> doThrow(DEAD).when(s.discharge).off()),
        new Failing("load off", s -> doThrow(DEAD).when(s.load).off()),
        new Failing("relay open", s -> doThrow(DEAD).when(s.digitizer).off()));
  }

  @ParameterizedTest
  @MethodSource("calls")
  void whicheverCallFailsTheSafeStateIsCommandedInItsOrderAndWhole(Failing failing) {
    Spied spied = new Spied();
    failing.fail().accept(spied);
    RunResult result =
        new RunEngine(spied.bench.clock)
            .run(Plans.plan(folder), spied.all(), RunListener.NONE, new Stop());

    assertEquals(RunEnd.Kind.BENCH_FAULT, result.end().kind());
    assertTrue(
        result.end().saw().contains("found nothing"), "it says what it saw: " + result.end().saw());
    InOrder last = spied.order();
    last.verify(spied.source).off();
    last.verify(spied.discharge).off();
    last.verify(spied.load).off();
    last.verify(spied.digitizer).off();
    boolean live = spied.bench.unit.sourceOn && spied.bench.unit.relayClosed;
    assertTrue(!live, "never source and relay on afterwards");
  }

  @Test
  void aRunWithoutTroubleGoesThroughItsStationsInOrder() {
    Spied spied = new Spied();
    new RunEngine(spied.bench.clock)
        .run(Plans.plan(folder), spied.all(), RunListener.NONE, new Stop());
    InOrder order = spied.order();
    order.verify(spied.load).identity();
    order.verify(spied.source).identity();
    order.verify(spied.digitizer).identity();
    order.verify(spied.discharge).identity();
    order.verify(spied.interlock).identity();
    safe(order, spied);
    order.verify(spied.interlock).whole();
    order.verify(spied.source).protect(16, 18);
    order.verify(spied.digitizer).start(1000, 5);
    order.verify(spied.discharge).discharge(false); // dead check: does it rise?
    order.verify(spied.discharge).discharge(true);
    order.verify(spied.discharge).discharge(false); // first power
    order.verify(spied.source).set(0, 0.5);
    order.verify(spied.relay).relay(true);
    order.verify(spied.source).output(true);
    order.verify(spied.source).set(12.5, 20);
    order.verify(spied.load).set(2);
    order.verify(spied.load).input(true);
    safe(order, spied);
    order.verify(spied.discharge).discharge(false); // proof
    order.verify(spied.discharge).discharge(true);
    safe(order, spied);
    order.verify(spied.digitizer).stop();
  }

  private static void safe(InOrder order, Spied spied) {
    order.verify(spied.source).off();
    order.verify(spied.discharge).off();
    order.verify(spied.load).off();
    order.verify(spied.digitizer).off();
  }

  @Test
  void everyOffIsAttemptedThoughAllOfThemFailAndEachIsReported() {
    Spied spied = new Spied();
    for (Runnable off :
        List.<Runnable>of(
            () -> doThrow(DEAD).when(spied.source).off(),
            () -> doThrow(DEAD).when(spied.discharge).off(),
            () -> doThrow(DEAD).when(spied.load).off(),
            () -> doThrow(DEAD).when(spied.digitizer).off())) {
      off.run();
    }
    List<String> troubles = SafeState.take(spied.all());
    assertEquals(4, troubles.size(), troubles.toString());
    safe(spied.order(), spied);
  }
}
