package corewright.bench.record;

import java.time.Instant;

/**
 * A unit as it was received: the shop's own tag and what the label says.
 *
 * @param tag the shop's permanent ID with its check character, never reused
 * @param serial the maker's serial, exactly as read
 * @param customer whose it is
 * @param mode {@code repair}, {@code exchange} or {@code stock}
 * @param complaint the customer's words
 */
public record Core(
    String tag,
    String family,
    String serial,
    String label,
    String customer,
    String mode,
    String complaint,
    Instant received,
    String receivedBy) {}
