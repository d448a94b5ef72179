package corewright.reports.ledger;

import java.security.PublicKey;
import java.util.List;

/**
 * What somebody outside knows about a ledger and holds it against.
 *
 * @param keys the shop's public keys, from elsewhere; empty: those that the ledger itself names
 * @param heads from documents, exports and backups
 */
public record Expectations(List<PublicKey> keys, List<Head> heads) {
  public static final Expectations NONE = new Expectations(List.of(), List.of());

  public Expectations {
    keys = List.copyOf(keys);
    heads = List.copyOf(heads);
  }
}
