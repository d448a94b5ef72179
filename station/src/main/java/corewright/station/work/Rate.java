package corewright.station.work;

import corewright.measures.statistics.Interval;
import corewright.measures.statistics.Proportion;
import java.util.List;
import java.util.Optional;

/**
 * How many of how many, and which.
 *
 * @param of what it is a rate of, as the variant or the technician; empty: of everything
 * @param hits tags that count
 * @param others tags that were looked at and do not
 */
public record Rate(String of, List<String> hits, List<String> others) {
  private static final double LEVEL = 0.95;

  public Rate {
    hits = List.copyOf(hits);
    others = List.copyOf(others);
  }

  public int n() {
    return hits.size() + others.size();
  }

  /** Wilson's interval, 95 %; none where nothing was looked at. */
  public Optional<Interval> interval() {
    return n() == 0
        ? Optional.empty()
        : Optional.of(new Proportion(hits.size(), n()).wilson(LEVEL));
  }
}
