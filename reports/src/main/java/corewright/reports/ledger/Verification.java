package corewright.reports.ledger;

import java.util.List;

/**
 * What a check of the whole event chain found.
 *
 * @param events how many events were read
 * @param signed how many of them carry a good signature
 * @param keys ids of the keys that signed, in the order they were met
 * @param heads the last event of each chain
 * @param broken what is wrong, the first place first; empty when every event is as it was written
 */
public record Verification(
    long events, long signed, List<String> keys, List<Head> heads, List<String> broken) {

  public Verification {
    keys = List.copyOf(keys);
    heads = List.copyOf(heads);
    broken = List.copyOf(broken);
  }

  public boolean whole() {
    return broken.isEmpty();
  }
}
