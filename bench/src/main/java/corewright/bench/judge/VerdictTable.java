package corewright.bench.judge;

import static corewright.bench.record.Finding.Outcome.FAIL;
import static corewright.bench.record.Finding.Outcome.MARGINAL;
import static corewright.bench.record.Finding.Outcome.NOT_MEASURED;
import static corewright.bench.record.Finding.Outcome.PASS;

import corewright.bench.record.Qualifier;
import corewright.bench.record.RunEnd.Kind;
import corewright.bench.record.RunEnd.Trip;
import corewright.bench.record.Verdict;
import corewright.measures.Figures;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The bench verdict: a table read from the top. Danger first (but on a bench that refuses a known
 * good unit too, none is seen), then whether bench and input allow a verdict at all, then what the
 * unit did.
 */
final class VerdictTable {
  private VerdictTable() {}

  /**
   * @param id stable
   * @param verdict empty: nothing can be said, and the reasons say why
   * @param reasons most important first
   */
  record Row(
      String id,
      Optional<Verdict> verdict,
      Predicate<Saw> when,
      Function<Saw, List<String>> reasons) {}

  /**
   * Rows of a bench in doubt: an input that fell there is the bench's doing, as when its relay let
   * go, and speaks against no supply.
   */
  static final Set<String> BENCH = Set.of("V09", "V20", "V35");

  static final List<Row> ROWS =
      List.of(
          row(
              "V09",
              Verdict.VOID,
              s -> s.ended(Kind.REFUSED_TO_POWER) && !s.doubts().isEmpty(),
              Saw::doubts),
          row("V10", Verdict.UNSAFE, s -> s.ended(Kind.REFUSED_TO_POWER), VerdictTable::end),
          row("V11", Verdict.UNSAFE, s -> s.tripped(Trip.OUTPUT_OVER), VerdictTable::end),
          row("V12", Verdict.UNSAFE, s -> s.tripped(Trip.SUPPLY_CURRENT_OVER), VerdictTable::end),
          row("V13", Verdict.UNSAFE, s -> s.over().isPresent(), s -> s.over().stream().toList()),
          row("V20", Verdict.VOID, s -> s.ended(Kind.BENCH_FAULT), VerdictTable::end),
          row("V30", Verdict.INCOMPLETE, s -> s.ended(Kind.STOPPED), VerdictTable::end),
          row("V31", Verdict.INCOMPLETE, s -> s.ended(Kind.ABANDONED), VerdictTable::end),
          row("V32", Verdict.INCOMPLETE, s -> s.holds().isEmpty(), VerdictTable::noHolds),
          row("V35", Verdict.VOID, s -> !s.doubts().isEmpty(), Saw::doubts),
          row(
              "V40",
              Verdict.VOID,
              s -> s.qualified(Qualifier.VOID),
              s -> List.of(said(s), s.input().remedy())),
          row(
              "V41",
              Verdict.VOID,
              s -> s.contradiction().isPresent(),
              s -> s.contradiction().stream().toList()),
          row(
              "V42",
              Verdict.VOID,
              s -> s.qualified(Qualifier.TOLERATED) && bad(s),
              s ->
                  Stream.of(List.of(said(s), InputCheck.STIFFER), badness(s))
                      .flatMap(List::stream)
                      .toList()),
          row(
              "V45",
              Verdict.MARGINAL,
              s -> !ranIntoTrouble(s) && Repeats.of(s).isPresent(),
              s ->
                  Stream.of(
                          List.of(Repeats.of(s).orElseThrow(), Repeats.REMEDY),
                          s.sentences(s.with(FAIL)),
                          List.of(said(s)))
                      .flatMap(List::stream)
                      .toList()),
          row("V50", Verdict.FAIL, VerdictTable::failed, VerdictTable::badness),
          new Row("V60", Optional.empty(), s -> !s.loaded(), VerdictTable::atRest),
          row(
              "V70",
              Verdict.INCOMPLETE,
              s -> s.with(NOT_MEASURED).findAny().isPresent(),
              s -> s.sentences(s.with(NOT_MEASURED))),
          row(
              "V80",
              Verdict.MARGINAL,
              s -> s.with(MARGINAL).findAny().isPresent(),
              VerdictTable::badness),
          row("V90", Verdict.PASS, s -> s.with(PASS).findAny().isPresent(), VerdictTable::good),
          new Row("V99", Optional.empty(), s -> true, s -> List.of("No limit says what is good.")));

  private static Row row(
      String id, Verdict verdict, Predicate<Saw> when, Function<Saw, List<String>> reasons) {
    return new Row(id, Optional.of(verdict), when, reasons);
  }

  private static boolean failed(Saw s) {
    return ranIntoTrouble(s) || s.with(FAIL).findAny().isPresent();
  }

  private static boolean ranIntoTrouble(Saw s) {
    return s.tripped(Trip.OUTPUT_UNDER) || s.ended(Kind.TRIPPED) || s.collapse().isPresent();
  }

  /** Under a tolerated input only a pass counts. */
  private static boolean bad(Saw s) {
    return failed(s) || s.with(MARGINAL).findAny().isPresent();
  }

  private static List<String> badness(Saw s) {
    return Stream.of(
            s.ended(Kind.TRIPPED) ? end(s) : List.<String>of(),
            s.sentences(s.with(FAIL)),
            s.collapse().stream().toList(),
            s.sentences(s.with(MARGINAL)),
            List.of(said(s)))
        .flatMap(List::stream)
        .distinct()
        .toList();
  }

  private static List<String> good(Saw s) {
    return Stream.of(s.sentences(s.closest()), List.of(said(s))).flatMap(List::stream).toList();
  }

  private static List<String> atRest(Saw s) {
    return List.of(
        "A reading at rest proves nothing: the largest load was "
            + Figures.number(s.largestLoad_A(), 2)
            + " A, and a unit is judged from "
            + Figures.number(s.profile().provingLoad_A(), 2)
            + " A.",
        said(s));
  }

  private static List<String> noHolds(Saw s) {
    return List.of("No hold was measured: there is nothing to judge.");
  }

  private static List<String> end(Saw s) {
    return Stream.of(s.end().saw(), s.end().remedy()).filter(words -> !words.isEmpty()).toList();
  }

  private static String said(Saw s) {
    return s.input().sentence();
  }
}
