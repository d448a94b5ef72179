package corewright.bench.log;

/** A stretch of a log, seconds on its own clock. */
public record Window(double start_s, double end_s) {
  public double length_s() {
    return end_s - start_s;
  }
}
