package corewright.bench.commission;

import corewright.measures.Measurement;
import java.util.Map;
import java.util.Optional;

/**
 * What was read of the resistor: by the channels, and by the instruments that they are held
 * against.
 *
 * @param rest channels with everything off
 * @param idle with the supply on and no load
 * @param loaded with the load drawing
 * @param source what the source said, idle and loaded
 * @param load what the load said, idle and loaded; empty for one that is set by hand
 * @param meter what the meter read at input and output, idle; empty without one
 */
public record WiringSeen(
    Plug plug,
    Map<String, Spread> rest,
    Map<String, Spread> idle,
    Map<String, Spread> loaded,
    SourceSaid source,
    Optional<Measurement> load,
    Optional<MeterSaid> meter) {
  public WiringSeen {
    rest = Map.copyOf(rest);
    idle = Map.copyOf(idle);
    loaded = Map.copyOf(loaded);
  }

  /** The source's own readings. */
  public record SourceSaid(Measurement idle_V, Measurement idle_A, Measurement loaded_A) {}

  /** The meter's readings, idle. */
  public record MeterSaid(Measurement input_V, Measurement output_V) {}
}
