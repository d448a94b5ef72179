package corewright.station.web.live;

import corewright.bench.hand.Hands;
import corewright.bench.port.Digitizer;
import corewright.bench.port.serial.SerialLinks;
import corewright.bench.port.socket.SocketLinks;
import corewright.bench.run.BenchInstruments;
import corewright.bench.run.Clock;
import corewright.bench.wire.BenchOpener;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.emulate.EmulatedBench;
import corewright.fixtures.emulate.unit.TrueState;
import corewright.fixtures.emulate.unit.UnitParameters;
import corewright.station.work.KeptWire;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.time.Duration;

/**
 * An emulated bench that tells what really became of the unit. Each frame takes a moment, so that a
 * person has time to press something in every step.
 */
final class EmulatedForTests implements Bench {
  private static final Duration MOMENT = Duration.ofNanos(500_000);

  private final Clock clock = Clock.system();
  private volatile TrueState atTheEnd;

  @Override
  public BenchDescription description() {
    return Descriptions.shippedBench("emulated-sd48");
  }

  @Override
  public boolean emulated() {
    return true;
  }

  /** What was really there when the bench was closed. */
  TrueState atTheEnd() {
    return atTheEnd;
  }

  @Override
  public Opened open(Unit unit, Hands hands, KeptWire wire) {
    try {
      EmulatedBench emulated = EmulatedBench.open(UnitParameters.healthy(unit.family()), 5);
      BenchDescription here = description().withPorts(emulated.ports());
      BenchInstruments all =
          new BenchOpener(
                  new SocketLinks(clock, new SerialLinks(clock)),
                  Descriptions::shippedDialect,
                  clock)
              .open(here);
      return new Opened() {
        @Override
        public BenchDescription description() {
          return here;
        }

        @Override
        public BenchInstruments instruments() {
          return all.with(unhurried(all.digitizer()));
        }

        @Override
        public void close() {
          atTheEnd = emulated.state();
          all.close();
          emulated.close();
        }
      };
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Digitizer unhurried(Digitizer digitizer) {
    return (Digitizer)
        Proxy.newProxyInstance(
            Digitizer.class.getClassLoader(),
            new Class<?>[] {Digitizer.class},
            (self, method, arguments) -> {
              if (method.getName().equals("next")) {
                clock.pause(MOMENT);
              }
              try {
                return method.invoke(digitizer, arguments);
              } catch (InvocationTargetException thrown) {
                throw thrown.getCause();
              }
            });
  }
}
