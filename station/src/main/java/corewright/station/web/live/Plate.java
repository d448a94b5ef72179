package corewright.station.web.live;

import corewright.measures.Figures;
import java.util.Optional;

/**
 * Whether the unit on a bench is energised: a measured voltage at its terminals, never a command
 * that was sent. It fails lit: what is not known counts as energised.
 *
 * @param form {@code off}, {@code on}, {@code unknown} or {@code danger}
 * @param word the state, in the closed words
 * @param line what to do, or why it is so
 * @param volts the measured voltage, without its unit; a question mark where it is not known
 */
public record Plate(String form, String word, String line, String volts) {
  /** Without a frame for so long nothing is known any more. */
  static final long STALE_NANOS = 1_000_000_000L;

  private static final double NANOS_PER_S = 1e9;

  /** A bench on which nothing has been measured since the program started. */
  static final Plate NO_RUN =
      new Plate("off", "NO RUN YET", "No run here since the station was started.", "–");

  private static final Plate NOT_SWITCHED_ON =
      new Plate("off", "NOT SWITCHED ON", "Nothing was switched on in this run.", "–");

  /** A run that died, or that could not be closed: nothing is known of what is on the bench. */
  static Plate left(String why) {
    return new Plate("unknown", "NOT KNOWN", "Treat as energised. " + why, "?");
  }

  /**
   * Of a run.
   *
   * @param before what was so before it, which stays where it switched nothing on
   */
  static Plate of(LiveRun run, long nanos, Plate before) {
    Optional<Seen> seen = run.seen();
    double safe_V = run.course().family().discharge().safe_V();
    if (run.record().isPresent() || run.isOver() || run.isProvedDead()) {
      return after(run, before);
    }
    if (seen.isEmpty()) {
      return new Plate("unknown", "NOT KNOWN", "Treat as energised. Nothing is read yet.", "?");
    }
    Seen now = seen.get();
    long age = nanos - now.atNanos();
    if (age > STALE_NANOS) {
      return new Plate(
          "unknown",
          "NOT KNOWN",
          "Treat as energised. "
              + Figures.number(now.output_V(), 1)
              + " V was read "
              + Figures.number(age / NANOS_PER_S, 0)
              + " s ago.",
          "?");
    }
    double volts = Math.max(now.output_V(), now.input_V() >= safe_V ? now.input_V() : 0);
    boolean atOutput = now.output_V() >= safe_V || now.input_V() < safe_V;
    if (volts < safe_V) {
      return new Plate(
          "unknown",
          "NOT PROVED",
          "Treat as energised: under " + Figures.number(safe_V, 0) + " V, being proved.",
          Figures.number(now.output_V(), 1));
    }
    String shown = Figures.number(atOutput ? now.output_V() : now.input_V(), 1);
    if (!now.chainWhole()) {
      return new Plate("danger", "DANGER", "The chain is open. Hands off! Close the cover.", shown);
    }
    return new Plate(
        "on",
        "ENERGISED",
        atOutput
            ? "Keep the cover closed. Hands off the unit."
            : "At its input. Keep the cover closed.",
        shown);
  }

  private static Plate after(LiveRun run, Plate before) {
    if (run.isProvedDead()) {
      return new Plate(
          "off",
          "NOT ENERGISED",
          "Proved at the end of the run.",
          Figures.number(run.seen().map(Seen::output_V).orElse(0.0), 2));
    }
    if (!run.powered() && run.record().isPresent() && run.record().get().troubles().isEmpty()) {
      return before.form().equals("off")
          ? NOT_SWITCHED_ON
          : before; // what it read then was another unit's
    }
    String why =
        run.record()
            .flatMap(r -> r.troubles().stream().findFirst())
            .orElse(run.failure().isEmpty() ? "The discharge was not proved." : run.failure());
    return left(why);
  }
}
