package corewright.station.cli;

import corewright.bench.run.Stop;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;

/**
 * Ctrl-C, and a polite request to end, set the stop and do nothing else: the run then ends in the
 * safe state, and the program after it. A hook at the end of the process would be too late: the
 * serial library closes all ports in one of its own, at the same time.
 *
 * <p>Signals are reached by reflection: the class is part of every JDK, and none of the standard.
 */
final class StopKeys implements AutoCloseable {
  private static final String[] SIGNALS = {"INT", "TERM"};

  private final Stop stop = new Stop();

  StopKeys() {
    for (String signal : SIGNALS) {
      listen(signal);
    }
  }

  Stop stop() {
    return stop;
  }

  private void listen(String name) {
    try {
      Class<?> signal = Class.forName("sun.misc.Signal");
      Class<?> handler = Class.forName("sun.misc.SignalHandler");
      Object ours =
          Proxy.newProxyInstance(
              handler.getClassLoader(),
              new Class<?>[] {handler},
              (self, m, a) -> answer(self, m, a));
      signal
          .getMethod("handle", signal, handler)
          .invoke(null, signal.getConstructor(String.class).newInstance(name), ours);
    } catch (ClassNotFoundException
        | NoSuchMethodException
        | InstantiationException
        | IllegalAccessException
        | InvocationTargetException missing) {
      // Without signals an interrupt ends the process; the board's watchdog then opens the feed.
      return;
    }
  }

  private Object answer(Object self, Method method, Object[] arguments) {
    return switch (method.getName()) {
      case "handle" -> {
        stop.request("The operator pressed Ctrl-C.");
        yield self;
      }
      case "hashCode" -> System.identityHashCode(self);
      case "equals" -> self == arguments[0];
      default -> "stop";
    };
  }

  /** Signals stay caught: nothing is energised any more, and the program is about to leave. */
  @Override
  public void close() {}
}
