package corewright.station.work.commission;

import corewright.bench.commission.Spread;
import corewright.bench.commission.TripTime;
import corewright.bench.commission.WiringFinding;
import corewright.fixtures.describe.BenchDescription;
import java.util.List;
import java.util.Map;

/**
 * What a bench came to on its first day.
 *
 * @param bench what would be written; without its measured time to off where the wiring is wrong
 * @param noise what its channels read with everything off
 * @param trips each fault that was timed; empty where the wiring is wrong
 * @param emulated nothing of it is real
 */
public record Commissioned(
    BenchDescription bench,
    List<WiringFinding> wiring,
    Map<String, Spread> noise,
    List<TripTime> trips,
    boolean emulated) {
  public Commissioned {
    wiring = List.copyOf(wiring);
    noise = Map.copyOf(noise);
    trips = List.copyOf(trips);
  }

  /** Whether the bench may be used as it is wired. */
  public boolean stands() {
    return wiring.stream().allMatch(f -> f.kind().stands());
  }
}
