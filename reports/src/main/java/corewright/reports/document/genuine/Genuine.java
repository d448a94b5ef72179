package corewright.reports.document.genuine;

import java.security.PublicKey;
import java.util.List;
import java.util.Optional;

/**
 * What a document says of itself.
 *
 * @param whole whether every byte is as it was signed
 * @param key the key that signed it; empty where no signature can be read
 * @param holder whose key it says it is; only a key from elsewhere proves that
 * @param record the record that it carries, JSON; empty where there is none
 * @param code the short code of that record
 * @param faults what is not as it was signed, each a sentence; empty if {@code whole}
 */
public record Genuine(
    boolean whole,
    Optional<PublicKey> key,
    String holder,
    Optional<String> record,
    String code,
    List<String> faults) {

  public Genuine {
    faults = List.copyOf(faults);
  }
}
