package corewright.bench.log;

import corewright.bench.log.table.Row;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Finds cranks while rows go by, and hands each on with what lies about it. Nothing else is kept,
 * so a log of any length takes the same memory.
 */
final class CrankFinder {
  /** What is kept after a crank, s. */
  private static final double TAIL_S = 10;

  /** A silence longer than this ends whatever was going on, s. */
  private static final double SILENCE_S = 10;

  private static final int MOST_ROWS = 120_000;

  private final CrankSign sign;
  private final Consumer<Attempt> found;
  private final Recent recent = new Recent();
  private List<Row> rows = new ArrayList<>();
  private boolean cranking;

  /** Whether a crank was given up and the starter still seems to turn. */
  private boolean stuck;

  private double begin_s;
  private double last_s;
  private Optional<Ended> ended = Optional.empty();
  private int segment = -1;
  private double latest_s;

  private record Ended(double at_s, Attempt.End how) {}

  CrankFinder(CrankSign sign, Consumer<Attempt> found) {
    this.sign = sign;
    this.found = found;
  }

  void all(Iterator<Row> log) {
    while (log.hasNext()) {
      take(log.next());
    }
    cut();
  }

  private void take(Row row) {
    if (row.segment() != segment || row.t_s() - latest_s > SILENCE_S) {
      cut();
      recent.clear();
      sign.reset();
    }
    segment = row.segment();
    latest_s = row.t_s();
    recent.add(row);
    if (!rows.isEmpty()) {
      rows.add(row);
    }
    switch (sign.look(row)) {
      case CRANKING -> crank(row);
      case RUNNING -> end(row, Attempt.End.STARTED);
      case STILL -> end(row, Attempt.End.RELEASED);
      case NOTHING -> {}
    }
    boolean tooLong = cranking && row.t_s() - begin_s > LogRule.LONGEST_S;
    if (tooLong || rows.size() > MOST_ROWS) {
      end(row, Attempt.End.TOO_LONG);
      cut();
      stuck = true;
    }
    if (ended.isPresent() && row.t_s() - ended.get().at_s > TAIL_S) {
      hand();
    }
  }

  private void crank(Row row) {
    if (stuck) {
      return;
    }
    if (cranking) {
      last_s = row.t_s();
      return;
    }
    boolean goesOn =
        ended
            .filter(e -> e.how == Attempt.End.RELEASED && row.t_s() - e.at_s < sign.pause_s())
            .isPresent();
    if (goesOn) {
      ended = Optional.empty();
    } else {
      if (ended.isPresent()) {
        hand();
      }
      begin_s = row.t_s();
      rows = recent.rows();
    }
    cranking = true;
    last_s = row.t_s();
  }

  private void end(Row row, Attempt.End how) {
    stuck = false;
    if (cranking) {
      cranking = false;
      ended = Optional.of(new Ended(row.t_s(), how));
    }
  }

  /** The log ends, pauses or falls silent. */
  private void cut() {
    stuck = false;
    if (cranking) {
      cranking = false;
      ended = Optional.of(new Ended(last_s, Attempt.End.CUT_OFF));
    }
    if (ended.isPresent()) {
      hand();
    }
    rows = new ArrayList<>();
  }

  private void hand() {
    ended.ifPresent(
        e -> {
          Attempt attempt = new Attempt(rows, begin_s, last_s, e.at_s, e.how, sign.foundBy());
          if (sign.isOne(attempt)) {
            found.accept(attempt);
          }
        });
    ended = Optional.empty();
    rows = new ArrayList<>();
  }
}
