package corewright.reports.ledger;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * One thing that happened, as it was written down.
 *
 * @param chain who wrote it; each writer's events are one chain
 * @param sequence counted in the chain from 1
 * @param at when it was written, UTC, as {@link #time}
 * @param kind id of an {@link EventKind}; any text in a ledger that was tampered with
 * @param body canonical JSON of what happened
 * @param previous hash of the event before it, {@link Hashes#NOTHING} for the first
 * @param hash of everything above, by {@link Hashes#of}
 * @param keyId which key signed the hash, by {@link PublicKeys#id}; empty: nobody signed
 * @param signature over the hash, hex; empty: nobody signed
 */
record Event(
    String chain,
    long sequence,
    String at,
    String who,
    String kind,
    String tag,
    String body,
    String previous,
    String hash,
    String keyId,
    String signature) {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS'Z'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);

  /** The same with another text in its place; its hash is still that of the whole one. */
  Event saying(String other) {
    return new Event(chain, sequence, at, who, kind, tag, other, previous, hash, keyId, signature);
  }

  /** An instant as events carry it: of one width, so that text sorts as time does. */
  static String time(Instant instant) {
    return TIME.format(instant);
  }
}
