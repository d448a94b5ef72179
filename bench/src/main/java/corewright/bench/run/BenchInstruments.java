package corewright.bench.run;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Instrument;
import corewright.bench.port.Interlock;
import corewright.bench.port.Load;
import corewright.bench.port.Source;
import corewright.bench.port.Switch;
import java.util.List;

/** The opened instruments of a bench, one for each role. Closing gives every port back. */
public record BenchInstruments(
    Load load, Source source, Digitizer digitizer, Switch discharge, Interlock interlock)
    implements AutoCloseable {

  /** In the order in which they are named in records. */
  public List<Instrument> all() {
    return List.of(load, source, digitizer, discharge, interlock);
  }

  @Override
  public void close() {
    all().forEach(Instrument::close);
  }
}
