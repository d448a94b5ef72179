package corewright.reports.ledger;

import java.util.List;

/**
 * How many units that left share something with one.
 *
 * @param what as {@code lot LOT-7}
 * @param first tags of the first of them, in order
 */
public record Sharing(String what, int count, List<String> first) {

  public Sharing {
    first = List.copyOf(first);
  }
}
