package corewright.bench.run;

import corewright.bench.port.Digitizer;
import corewright.bench.port.Instrument;
import corewright.bench.port.Interlock;
import corewright.bench.port.Load;
import corewright.bench.port.Meter;
import corewright.bench.port.Relay;
import corewright.bench.port.Source;
import corewright.bench.port.Switch;
import corewright.bench.port.Thermometer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The opened instruments of a bench, one for each role. Closing gives every port back.
 *
 * @param relay the digitizer itself where that is the fixture's board
 * @param thermometer on the unit's case; without one its temperature counts as not measured
 * @param meter on the unit's terminals; without one shorts are found by the first power alone
 */
public record BenchInstruments(
    Load load,
    Source source,
    Digitizer digitizer,
    Relay relay,
    Switch discharge,
    Interlock interlock,
    Optional<Thermometer> thermometer,
    Optional<Meter> meter)
    implements AutoCloseable {

  /** In the order in which they are named in records. */
  public List<Instrument> all() {
    return Stream.concat(
            Stream.of(load, source, digitizer, discharge, interlock),
            Stream.of(ownRelay(), thermometer, meter).flatMap(Optional::stream))
        .toList();
  }

  private Optional<Relay> ownRelay() {
    return relay.role().equals(digitizer.role()) ? Optional.empty() : Optional.of(relay);
  }

  /** The same bench with another digitizer, as one that stands before it. */
  public BenchInstruments with(Digitizer other) {
    return new BenchInstruments(
        load, source, other, relay, discharge, interlock, thermometer, meter);
  }

  /** Every one of them, whatever becomes of the others; then what went wrong is told. */
  @Override
  public void close() {
    List<RuntimeException> broken = new ArrayList<>();
    for (Instrument instrument : all()) {
      try {
        instrument.close();
      } catch (RuntimeException one) {
        broken.add(one);
      }
    }
    if (!broken.isEmpty()) {
      RuntimeException first = broken.remove(0);
      broken.forEach(first::addSuppressed);
      throw first;
    }
  }
}
