package corewright.bench.run;

import java.util.List;

/**
 * The way out of every run, and the first thing done on the way in: source off, discharge on, load
 * off, relay open, each attempted whatever the others do and confirmed by the instrument's answer.
 * Idempotent.
 */
public final class SafeState {

  private SafeState() {}

  /**
   * Commands it.
   *
   * @return what could not be confirmed, each a sentence; empty if all of it was
   */
  public static List<String> take(BenchInstruments bench) {
    return new Attempts()
        .attempt("Switching the source off", bench.source()::off)
        .attempt("Connecting the discharge resistor", bench.discharge()::off)
        .attempt("Switching the load off", bench.load()::off)
        .attempt("Opening the feed relay", bench.relay()::off)
        .attempt(
            "Asking the discharge switch",
            () -> {
              if (!bench.discharge().discharging()) {
                throw new IllegalStateException("it says that the resistor is not connected");
              }
            })
        .troubles();
  }
}
