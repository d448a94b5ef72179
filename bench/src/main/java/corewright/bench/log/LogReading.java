package corewright.bench.log;

import corewright.bench.log.table.Column;
import corewright.bench.log.table.TimeReport;
import java.util.List;
import java.util.Optional;

/**
 * Everything that one log came to.
 *
 * @param file its name
 * @param conclusion the first of fault, good, inconclusive, void that one crank gives
 * @param reasons most important first
 * @param doubts why they could be wrong
 * @param next what to ask for
 * @param cranks in the order of time
 * @param columns every column and what it was taken for
 * @param family empty where none was named and none could be told
 * @param familyHow how it was told, one clause
 * @param time what the times are
 * @param pace how regular they are
 * @param dialect how the lines are cut
 * @param remarks what was left out at reading, each a sentence
 * @param overview the whole log thinned, for a picture where no crank was found
 */
public record LogReading(
    String file,
    Conclusion conclusion,
    List<String> reasons,
    List<String> doubts,
    List<String> next,
    List<Crank> cranks,
    List<Column> columns,
    Optional<LogFamily> family,
    String familyHow,
    TimeReport time,
    Pace.Figures pace,
    String dialect,
    List<String> remarks,
    List<Trace> overview) {

  /** Stands under every conclusion. */
  public static final String NOT_ABOVE_THE_BENCH =
      "A log is evidence and no test: whatever the bench finds stands above it.";

  public LogReading {
    reasons = List.copyOf(reasons);
    doubts = List.copyOf(doubts);
    next = List.copyOf(next);
    cranks = List.copyOf(cranks);
    columns = List.copyOf(columns);
    remarks = List.copyOf(remarks);
    overview = List.copyOf(overview);
  }

  /** The crank that decided; empty without cranks. */
  public Optional<Crank> deciding() {
    return cranks.stream().filter(c -> c.conclusion() == conclusion).findFirst();
  }
}
