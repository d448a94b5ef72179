package corewright.reports.ledger;

import corewright.bench.life.Life;

/**
 * Where a unit stands.
 *
 * @param since when it came to its stage, UTC
 * @param grade condition on arrival, A to X; empty: not graded
 * @param question of a unit on hold; empty otherwise, like owner and due
 * @param due ISO 8601 date
 */
public record Standing(
    String tag,
    int visit,
    Life life,
    String since,
    String grade,
    String question,
    String owner,
    String due) {}
