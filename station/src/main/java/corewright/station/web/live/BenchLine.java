package corewright.station.web.live;

/**
 * A bench in the list.
 *
 * @param on who drives what; empty if nobody does
 */
public record BenchLine(Glance glance, String title, boolean emulated, String on) {
  public static BenchLine of(LiveBench bench) {
    return new BenchLine(
        Benches.glance(bench),
        bench.title(),
        bench.emulated(),
        bench
            .running()
            .map(r -> r.start().driver() + " drives, " + r.start().tag() + " is on it.")
            .orElse(""));
  }
}
