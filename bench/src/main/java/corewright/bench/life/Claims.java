package corewright.bench.life;

import corewright.bench.life.ClaimFacts.Cause;
import corewright.bench.life.ClaimFacts.Coverage;
import corewright.bench.life.ClaimFacts.Group;
import corewright.bench.life.ClaimFacts.Identity;
import corewright.bench.life.ClaimFacts.Returned;
import corewright.bench.life.ClaimFacts.Seal;
import corewright.bench.life.ClaimFacts.Term;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Classes a claim: the first row that fits holds. A fact that is still unknown stops the table at
 * the question that asks for it, because a later row would decide without it.
 */
public final class Claims {
  /**
   * One row.
   *
   * @param claim the class, or empty where the row asks
   * @param words what it rests on, or what has to be found out first
   */
  public record Row(
      String id, Optional<ClaimClass> claim, String words, Predicate<ClaimFacts> fits) {}

  static final List<Row> TABLE =
      List.of(
          ask(
              "C10",
              "whether it is our unit: serial and hidden mark",
              f -> f.identity() == Identity.UNKNOWN),
          row(
              "C11",
              ClaimClass.W6,
              "serial or mark is not ours",
              f -> f.identity() == Identity.NOT_OURS),
          ask("C20", "whether it came within its term", f -> f.term() == Term.UNKNOWN),
          row("C21", ClaimClass.W7, "the term is over", f -> f.term() == Term.OUT),
          ask("C30", "the seal, photographed before opening", f -> f.seal() == Seal.UNKNOWN),
          ask("C31", "a test as returned, before opening", f -> f.returned() == Returned.UNKNOWN),
          row(
              "C32",
              ClaimClass.W5,
              "the seal is broken and the mark is gone",
              f -> f.seal() == Seal.BROKEN),
          ask(
              "C40",
              "cold, hot and tapped tests: a pass at room temperature proves too little",
              f -> f.returned() == Returned.PASS && f.coverage() != Coverage.COMPLETE),
          row(
              "C41",
              ClaimClass.W4,
              "passed everything as returned",
              f -> f.returned() == Returned.PASS),
          ask("C50", "whether something outside the unit did it", f -> f.cause() == Cause.UNKNOWN),
          row(
              "C51",
              ClaimClass.W3,
              "a cause outside the unit was found",
              f -> f.cause() == Cause.EXTERNAL),
          ask("C60", "which group failed, from the teardown", f -> f.group() == Group.UNKNOWN),
          row(
              "C61",
              ClaimClass.W1,
              "the group that was rebuilt failed again",
              f -> f.group() == Group.SAME),
          row("C62", ClaimClass.W2, "another group failed", f -> true));

  private Claims() {}

  public static Row decide(ClaimFacts facts) {
    return TABLE.stream().filter(row -> row.fits().test(facts)).findFirst().orElseThrow();
  }

  private static Row row(String id, ClaimClass claim, String words, Predicate<ClaimFacts> fits) {
    return new Row(id, Optional.of(claim), words, fits);
  }

  private static Row ask(String id, String words, Predicate<ClaimFacts> fits) {
    return new Row(id, Optional.empty(), words, fits);
  }
}
