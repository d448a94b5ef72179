package corewright.bench.triage;

import java.util.List;
import java.util.stream.Stream;

/**
 * Rebuild, replace or return: read from the top, the first row that applies decides. Custody first,
 * then identity, then evidence, then what the customer said, then what can be done, then money.
 * Days and order are the trade's judgement, not a standard's.
 */
final class DecisionTable {
  /** Counts up with every change of a row. */
  static final int REVISION = 3;

  static final List<Row> ROWS =
      Stream.of(CustodyRows.ALL, EvidenceRows.ALL, CustomerRows.ALL, WorkshopRows.ALL)
          .flatMap(List::stream)
          .toList();

  private DecisionTable() {}
}
