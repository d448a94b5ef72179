package corewright.reports.ledger;

import java.util.List;

/**
 * What a check of the whole event chain found.
 *
 * @param events how many events were read
 * @param heads the last hash of each chain, as {@code bench-1:1042:9f86…}
 * @param broken what is wrong, the first place first; empty when every event is as it was written
 */
public record Verification(long events, List<String> heads, List<String> broken) {

  public Verification {
    heads = List.copyOf(heads);
    broken = List.copyOf(broken);
  }

  public boolean whole() {
    return broken.isEmpty();
  }
}
