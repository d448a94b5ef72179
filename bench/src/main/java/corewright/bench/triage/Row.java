package corewright.bench.triage;

import corewright.bench.record.Disposition;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One row of the decision table.
 *
 * @param id stable; printed and kept
 * @param destination where the unit goes; empty for PENDING
 * @param owner for PENDING: whose question it is
 * @param due_days for PENDING: days until it is due
 * @param question for PENDING: what would release it
 * @param sentence what a customer could be read
 */
record Row(
    String id,
    Disposition disposition,
    String destination,
    String owner,
    int due_days,
    Predicate<Case> when,
    Function<Facts, String> question,
    Function<Facts, String> sentence) {

  static Row goes(
      String id,
      Disposition disposition,
      String destination,
      Predicate<Case> when,
      Function<Facts, String> sentence) {
    return new Row(id, disposition, destination, "", 0, when, f -> "", sentence);
  }

  static Row pending(
      String id,
      String owner,
      int due_days,
      Predicate<Case> when,
      Function<Facts, String> question,
      Function<Facts, String> sentence) {
    return new Row(id, Disposition.PENDING, "", owner, due_days, when, question, sentence);
  }
}
