package corewright.bench.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.bench.port.Interlock;
import corewright.bench.port.Load;
import corewright.bench.port.Source;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A port that cannot be given back keeps no other. */
class BenchInstrumentsTest {
  private final List<String> closed = new ArrayList<>();

  @Test
  void everyPortIsGivenBackAndEachThatCouldNotBeIsTold() {
    BenchInstruments fake = new FakeBench().instruments();
    BenchInstruments bench =
        new BenchInstruments(
            closing(Load.class, fake.load(), true),
            closing(Source.class, fake.source(), true),
            fake.digitizer(),
            fake.relay(),
            fake.discharge(),
            closing(Interlock.class, fake.interlock(), false),
            fake.thermometer(),
            fake.meter());
    IllegalStateException told = assertThrows(IllegalStateException.class, bench::close);
    assertEquals(List.of("load", "source", "interlock"), closed);
    assertEquals("load", told.getMessage());
    assertEquals("source", told.getSuppressed()[0].getMessage());
  }

  private <T> T closing(Class<T> role, T real, boolean breaks) {
    return role.cast(
        Proxy.newProxyInstance(
            role.getClassLoader(),
            new Class<?>[] {role},
            (self, method, arguments) -> {
              try {
                Object answer = method.invoke(real, arguments);
                if (method.getName().equals("close")) {
                  String name = ((corewright.bench.port.Instrument) real).role();
                  closed.add(name);
                  if (breaks) {
                    throw new IllegalStateException(name);
                  }
                }
                return answer;
              } catch (InvocationTargetException thrown) {
                throw thrown.getCause();
              }
            }));
  }
}
