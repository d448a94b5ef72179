package corewright.station.work.commission;

import corewright.bench.wire.PortFinder.Heard;
import java.util.List;

/**
 * One port of this computer, and what hangs on it.
 *
 * @param baud line rate at which it was heard, or asked last, bit/s
 * @param name what to call the port in a bench description
 * @param may what it can be, by the dialects there are; often one, empty if nobody knows it
 */
public record Answering(Heard heard, int baud, String name, List<Candidate> may) {
  public Answering {
    may = List.copyOf(may);
  }

  /**
   * A part that an instrument can take.
   *
   * @param dialect empty for a fixture's board
   */
  public record Candidate(String role, String dialect) {}

  /** The same, called by its path: that alone tells it from the others. */
  Answering byPath() {
    return new Answering(heard, baud, heard.port().path(), may);
  }

  /** Whether it answers and yet has no name that stays, as that of its adapter. */
  public boolean isOnlyAPath() {
    return heard.identity().isPresent()
        && !heard.port().title().isEmpty()
        && name.equals(heard.port().path());
  }

  /** What it said of itself, or why nothing is known. */
  public String words() {
    return heard.port().path()
        + ": "
        + heard
            .identity()
            .map(i -> i + (heard.board() ? " (a fixture's board)" : ""))
            .orElse(heard.why());
  }
}
