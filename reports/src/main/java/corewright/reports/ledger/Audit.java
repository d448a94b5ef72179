package corewright.reports.ledger;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** Walks every chain from its first event and compares each with what it must be. */
final class Audit {
  private final List<String> broken = new ArrayList<>();
  private final List<Head> heads = new ArrayList<>();
  private final Set<String> texts = new HashSet<>();
  private final List<String> changedTexts = new ArrayList<>();
  private final Signers signers;
  private final ExpectedHeads expected;
  private long events;
  private long signed;
  private boolean signedInChain;
  private Optional<Event> last = Optional.empty();

  private Audit(Signers signers, ExpectedHeads expected) {
    this.signers = signers;
    this.expected = expected;
  }

  static Verification of(Handle handle, Expectations expectations) {
    Audit audit =
        new Audit(Signers.of(handle, expectations.keys()), new ExpectedHeads(expectations.heads()));
    handle
        .createQuery("SELECT * FROM content ORDER BY sha256")
        .map((row, context) -> List.of(row.getString("sha256"), row.getString("body")))
        .useStream(all -> all.forEach(text -> audit.text(text.get(0), text.get(1))));
    handle
        .createQuery(
            Signers.exist(handle)
                ? "SELECT * FROM event ORDER BY chain, position"
                : "SELECT e.*, '' AS key_id, '' AS signature FROM event e ORDER BY chain, position")
        .map((row, context) -> Events.event(row))
        .useStream(all -> all.forEach(audit::see));
    audit.last.ifPresent(audit::head);
    audit.ends(handle);
    audit.broken.addAll(audit.expected.unmet(audit.heads));
    audit.broken.addAll(audit.changedTexts);
    return new Verification(
        audit.events, audit.signed, audit.signers.met(), audit.heads, audit.broken);
  }

  private void see(Event event) {
    Optional<Event> before = last.filter(e -> e.chain().equals(event.chain()));
    if (before.isEmpty()) {
      last.ifPresent(this::head);
      signedInChain = false;
    }
    long next = before.map(Event::sequence).orElse(0L) + 1;
    if (event.sequence() > next) {
      broken.add(name(event.chain(), next) + " to " + (event.sequence() - 1) + ": missing");
    } else if (event.sequence() < next) {
      broken.add(name(event) + ": stands after " + (next - 1) + ", out of order");
    } else if (!event.previous().equals(before.map(Event::hash).orElse(Hashes.NOTHING))) {
      broken.add(name(event) + ": does not follow from the event before it");
    }
    if (!event.hash().equals(Hashes.of(event))) {
      broken.add(name(event) + " (" + event.kind() + ", " + event.tag() + "): was changed");
    } else {
      textsOf(event);
    }
    signature(event);
    expected.see(event);
    events++;
    last = Optional.of(event);
  }

  private void signature(Event event) {
    Optional<String> fault = signers.fault(event, signedInChain);
    fault.ifPresent(f -> broken.add(name(event) + ": " + f));
    if (!event.signature().isEmpty()) {
      signedInChain = true;
      signed += fault.isEmpty() ? 1 : 0;
    }
  }

  private void head(Event event) {
    heads.add(new Head(event.chain(), event.sequence(), event.hash()));
  }

  /** The chain's own note of its end: events that were cut off at the tail leave it behind. */
  private void ends(Handle handle) {
    handle
        .createQuery("SELECT name, sequence, hash FROM chain ORDER BY name")
        .map(
            (row, context) ->
                new Head(row.getString("name"), row.getLong("sequence"), row.getString("hash")))
        .forEach(
            end -> {
              if (!heads.contains(end)) {
                broken.add("the chain was written up to " + end + ", which is not its last event");
              }
            });
  }

  private void text(String sha256, String body) {
    texts.add(sha256);
    if (!Hashes.of(body).equals(sha256)) {
      changedTexts.add("text " + sha256 + ": was changed");
    }
  }

  private void textsOf(Event event) {
    if (event.kind().equals(EventKind.RUN_ENDED.id())) {
      JsonNode run = Json.read(event.body());
      Contents.keys(run).stream()
          .filter(key -> !texts.contains(key))
          .forEach(key -> broken.add(name(event) + ": its text " + key + " is missing"));
    }
  }

  private static String name(Event event) {
    return name(event.chain(), event.sequence());
  }

  private static String name(String chain, long sequence) {
    return "event " + chain + ":" + sequence;
  }
}
