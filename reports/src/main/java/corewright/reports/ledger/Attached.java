package corewright.reports.ledger;

/**
 * A file that belongs to a unit.
 *
 * @param sha256 of its bytes, lower-case hex; its name in the shop's folder of files
 * @param name as it was called where it came from
 * @param kind {@code photo}, {@code log}, {@code letter} …
 * @param note what it shows
 */
public record Attached(String sha256, String name, String kind, String note) {}
