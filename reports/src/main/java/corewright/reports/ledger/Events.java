package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The event table: appended to, read, never changed. Always inside somebody's transaction. */
final class Events {
  private final String chain;
  private final Clock clock;
  private final Optional<SigningKey> key;

  /**
   * @param chain the chain this writer appends to
   * @param key what it signs with
   */
  Events(String chain, Clock clock, Optional<SigningKey> key) {
    this.chain = chain;
    this.clock = clock;
    this.key = key;
  }

  ZoneId zone() {
    return clock.getZone();
  }

  Event append(Handle handle, String who, EventKind kind, String tag, JsonNode body) {
    Link before = take(handle);
    String at = Event.time(clock.instant());
    String text = Json.canonical(body);
    String hash = Hashes.of(chain, before.sequence, at, who, kind.id(), tag, text, before.hash);
    Event event =
        new Event(
            chain,
            before.sequence,
            at,
            who,
            kind.id(),
            tag,
            text,
            before.hash,
            hash,
            key.map(SigningKey::id).orElse(""),
            key.map(k -> k.sign(hash)).orElse(""));
    key.ifPresent(k -> Signers.register(handle, k, at));
    handle
        .createUpdate(
            "INSERT INTO event (chain, sequence, at, who, kind, tag, body, previous, hash,"
                + " key_id, signature) VALUES (:chain, :sequence, :at, :who, :kind, :tag, :body,"
                + " :previous, :hash, :key_id, :signature)")
        .bind("chain", chain)
        .bind("sequence", event.sequence())
        .bind("at", at)
        .bind("who", who)
        .bind("kind", kind.id())
        .bind("tag", tag)
        .bind("body", text)
        .bind("previous", event.previous())
        .bind("hash", hash)
        .bind("key_id", event.keyId())
        .bind("signature", event.signature())
        .execute();
    handle.execute("UPDATE chain SET hash = ? WHERE name = ?", hash, chain);
    return event;
  }

  static List<Event> of(Handle handle, String tag) {
    return handle
        .createQuery("SELECT * FROM event WHERE tag = :tag ORDER BY position")
        .bind("tag", tag)
        .map((row, context) -> event(row))
        .list();
  }

  static Event event(ResultSet row) throws SQLException {
    return new Event(
        row.getString("chain"),
        row.getLong("sequence"),
        row.getString("at"),
        row.getString("who"),
        row.getString("kind"),
        row.getString("tag"),
        row.getString("body"),
        row.getString("previous"),
        row.getString("hash"),
        row.getString("key_id"),
        row.getString("signature"));
  }

  /** Where this writer's chain ends; empty before its first event. */
  Optional<Head> head(Handle handle) {
    return handle
        .createQuery("SELECT sequence, hash FROM chain WHERE name = :chain")
        .bind("chain", chain)
        .map((row, context) -> new Head(chain, row.getLong("sequence"), row.getString("hash")))
        .findOne();
  }

  /** The next free place of the chain, and with it the lock on the chain. */
  private Link take(Handle handle) {
    handle.execute(
        "INSERT INTO chain (name, sequence, hash) VALUES (?, 0, ?) ON CONFLICT (name) DO NOTHING",
        chain,
        Hashes.NOTHING);
    return handle
        .createQuery(
            "UPDATE chain SET sequence = sequence + 1 WHERE name = :chain"
                + " RETURNING sequence, hash")
        .bind("chain", chain)
        .map((row, context) -> new Link(row.getLong("sequence"), row.getString("hash")))
        .one();
  }

  private record Link(long sequence, String hash) {}
}
