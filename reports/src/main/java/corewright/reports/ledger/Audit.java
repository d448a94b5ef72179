package corewright.reports.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Walks every chain from its first event and compares each with what it must be. */
final class Audit {
  private final List<String> broken = new ArrayList<>();
  private final List<String> heads = new ArrayList<>();
  private long events;
  private Optional<Event> last = Optional.empty();

  private Audit() {}

  static Verification of(Handle handle) {
    Audit audit = new Audit();
    handle
        .createQuery("SELECT * FROM event ORDER BY chain, position")
        .map((row, context) -> Events.event(row))
        .useStream(all -> all.forEach(audit::see));
    audit.last.ifPresent(audit::head);
    audit.ends(handle);
    audit.contents(handle);
    return new Verification(audit.events, audit.heads, audit.broken);
  }

  private void see(Event event) {
    Optional<Event> before = last.filter(e -> e.chain().equals(event.chain()));
    if (before.isEmpty()) {
      last.ifPresent(this::head);
    }
    long expected = before.map(Event::sequence).orElse(0L) + 1;
    if (event.sequence() > expected) {
      broken.add(name(event.chain(), expected) + " to " + (event.sequence() - 1) + ": missing");
    } else if (event.sequence() < expected) {
      broken.add(name(event) + ": stands after " + (expected - 1) + ", out of order");
    } else if (!event.previous().equals(before.map(Event::hash).orElse(Hashes.NOTHING))) {
      broken.add(name(event) + ": does not follow from the event before it");
    }
    if (!event.hash().equals(Hashes.of(event))) {
      broken.add(name(event) + " (" + event.kind().id() + ", " + event.tag() + "): was changed");
    }
    events++;
    last = Optional.of(event);
  }

  private void head(Event event) {
    heads.add(event.chain() + ":" + event.sequence() + ":" + event.hash());
  }

  /** The chain's own note of its end: events that were cut off at the tail leave it behind. */
  private void ends(Handle handle) {
    handle
        .createQuery("SELECT name, sequence, hash FROM chain ORDER BY name")
        .map(
            (row, context) ->
                row.getString("name") + ":" + row.getLong("sequence") + ":" + row.getString("hash"))
        .forEach(
            end -> {
              if (!heads.contains(end)) {
                broken.add("the chain was written up to " + end + ", which is not its last event");
              }
            });
  }

  private void contents(Handle handle) {
    handle
        .createQuery("SELECT sha256, body FROM content ORDER BY sha256")
        .map(
            (row, context) ->
                Hashes.of(row.getString("body")).equals(row.getString("sha256"))
                    ? ""
                    : "text " + row.getString("sha256") + ": was changed")
        .useStream(all -> all.filter(problem -> !problem.isEmpty()).forEach(broken::add));
  }

  private static String name(Event event) {
    return name(event.chain(), event.sequence());
  }

  private static String name(String chain, long sequence) {
    return "event " + chain + ":" + sequence;
  }
}
