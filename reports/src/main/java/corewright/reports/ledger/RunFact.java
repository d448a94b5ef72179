package corewright.reports.ledger;

/**
 * One run in short, as a list shows it.
 *
 * @param visit of the unit, counted from 1
 * @param source name of a {@link corewright.bench.record.Source}
 * @param started UTC, ISO 8601
 * @param verdict empty where none was given, or where the run has not ended
 */
public record RunFact(
    String id,
    String tag,
    int visit,
    String purpose,
    int number,
    String source,
    String started,
    String operator,
    String bench,
    String profile,
    String verdict) {}
