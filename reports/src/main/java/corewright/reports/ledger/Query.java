package corewright.reports.ledger;

import java.util.Optional;

/**
 * What units are looked for by; everything given must hold.
 *
 * @param text a tag, a maker's serial, or a readable part of either
 * @param lot fitted from it, on any visit
 * @param person received it, ran it, or worked on it
 * @param bench id of a bench that ran it
 * @param fixture id of a fixture that it was run on
 * @param from first day of a reception or run, ISO 8601
 * @param until last day of one
 * @param stage where it stands, as {@link corewright.bench.life.Stage} names it
 * @param verdict that a run of it came to
 */
public record Query(
    Optional<String> text,
    Optional<String> lot,
    Optional<String> person,
    Optional<String> bench,
    Optional<String> fixture,
    Optional<String> from,
    Optional<String> until,
    Optional<String> stage,
    Optional<String> verdict) {}
