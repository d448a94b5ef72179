package corewright.reports.ledger;

import java.security.PublicKey;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** The keys whose signatures count, and what is wrong with an event's signature. */
final class Signers {
  private final Map<String, PublicKey> known = new HashMap<>();
  private final boolean fromOutside;
  private final Set<String> met = new LinkedHashSet<>();

  private Signers(boolean fromOutside) {
    this.fromOutside = fromOutside;
  }

  /** The keys given, or where none are, those that the ledger names. */
  static Signers of(Handle handle, List<PublicKey> given) {
    Signers signers = new Signers(!given.isEmpty());
    given.forEach(key -> signers.known.put(PublicKeys.id(key), key));
    if (given.isEmpty() && exist(handle)) {
      handle
          .createQuery("SELECT public_key FROM signer")
          .mapTo(String.class)
          .forEach(signers::addStored);
    }
    return signers;
  }

  /** Whether this ledger's schema has signatures; one that nobody has opened since has not. */
  static boolean exist(Handle handle) {
    try (ResultSet column =
        handle
            .getConnection()
            .getMetaData()
            .getColumns(null, handle.getConnection().getSchema(), "event", "signature")) {
      return column.next();
    } catch (SQLException e) {
      throw Faults.of("read the ledger's schema", e);
    }
  }

  /** Makes a key known to the ledger, once. */
  static void register(Handle handle, SigningKey key, String since) {
    handle.execute(
        "INSERT INTO signer (key_id, public_key, since) VALUES (?, ?, ?)"
            + " ON CONFLICT (key_id) DO NOTHING",
        key.id(),
        PublicKeys.base64(key.publicKey()),
        since);
  }

  /**
   * @param signedBefore whether an earlier event of the chain is signed
   * @return what is wrong; empty where nothing is
   */
  Optional<String> fault(Event event, boolean signedBefore) {
    if (event.signature().isEmpty() && event.keyId().isEmpty()) {
      return signedBefore || fromOutside ? Optional.of("is not signed") : Optional.empty();
    }
    PublicKey key = known.get(event.keyId());
    if (key == null) {
      return Optional.of(
          "is signed with key "
              + event.keyId()
              + (fromOutside ? ", which is none of those given" : ", which the ledger lacks"));
    }
    if (!PublicKeys.signed(key, event.hash(), event.signature())) {
      return Optional.of("its signature is wrong");
    }
    met.add(event.keyId());
    return Optional.empty();
  }

  /** Ids of the keys that made good signatures. */
  List<String> met() {
    return List.copyOf(met);
  }

  private void addStored(String base64) {
    try {
      PublicKey key = PublicKeys.ofBase64(base64);
      known.put(PublicKeys.id(key), key);
    } catch (IllegalArgumentException damaged) {
      // its signatures will be said to be of a key that the ledger lacks
    }
  }
}
