package corewright.bench.log;

import corewright.bench.log.LogAnalysis.SheetFindings;
import corewright.bench.log.table.Column;
import corewright.bench.log.table.Dropped;
import corewright.bench.log.table.Role;
import corewright.measures.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts the reading of a whole log together: which crank decides, what speaks against it, what next.
 */
final class ReadingWords {
  /** What sounds like the output and is none. */
  private static final Set<Role> TELLING =
      Set.of(Role.MANIFOLD, Role.COMMANDED, Role.NO_SCALE, Role.NOT_SAID);

  private ReadingWords() {}

  static LogReading put(String file, LogRequest request, List<SheetFindings> sheets) {
    SheetFindings main =
        sheets.stream()
            .max(Comparator.comparingInt((SheetFindings s) -> s.cranks().size()))
            .orElseThrow();
    List<Crank> cranks = new ArrayList<>();
    sheets.forEach(s -> cranks.addAll(s.cranks()));
    Optional<LogFamily> family = sheets.stream().flatMap(s -> s.family().stream()).findFirst();
    boolean noFamily = family.isEmpty() && anyOutput(sheets);
    List<Crank> judged = noFamily ? List.of() : cranks;
    Conclusion conclusion =
        judged.stream()
            .map(Crank::conclusion)
            .min(Comparator.naturalOrder())
            .orElse(Conclusion.INCONCLUSIVE);
    List<String> doubts = new ArrayList<>();
    if (request.family().isEmpty() && family.isPresent()) {
      doubts.add(
          "The family was told by where the output rests; name it with --family if that is wrong.");
    }
    if (main.sheet().time().assumed()) {
      doubts.add("The times are assumed from the rate that was typed; nothing was measured.");
    }
    if (main.blind()) {
      doubts.add("The column of engine speed never shows a turning engine.");
    }
    decidingDoubts(judged, conclusion, doubts);
    return new LogReading(
        file,
        conclusion,
        reasons(judged, conclusion, sheets, noFamily),
        doubts,
        next(conclusion, sheets),
        judged,
        columns(sheets),
        family,
        familyHow(request, family),
        main.sheet().time(),
        main.pace(),
        main.sheet().dialect(),
        remarks(sheets),
        main.overview());
  }

  private static boolean anyOutput(List<SheetFindings> sheets) {
    return sheets.stream()
        .flatMap(s -> s.sheet().channels().stream())
        .anyMatch(c -> c.role() == Role.OUTPUT);
  }

  private static String familyHow(LogRequest request, Optional<LogFamily> family) {
    if (request.family().isPresent()) {
      return "as said";
    }
    return family.isPresent() ? "by where the output rests" : "not told";
  }

  private static List<Column> columns(List<SheetFindings> sheets) {
    return sheets.stream().flatMap(s -> s.sheet().columns().stream()).toList();
  }

  private static List<String> reasons(
      List<Crank> cranks, Conclusion conclusion, List<SheetFindings> sheets, boolean noFamily) {
    List<String> reasons = new ArrayList<>();
    for (int i = 0; i < cranks.size(); i++) {
      if (cranks.get(i).conclusion() == conclusion) {
        String which = cranks.size() > 1 ? "Crank " + (i + 1) + ", " : "Crank, ";
        Crank c = cranks.get(i);
        String where =
            which + Figures.number(c.start_s(), 1) + " to " + Figures.number(c.end_s(), 1) + " s: ";
        reasons.add(where + c.reasons().get(0));
        reasons.addAll(c.reasons().subList(1, c.reasons().size()));
        break;
      }
    }
    disagreement(cranks, conclusion).ifPresent(reasons::add);
    if (noFamily) {
      reasons.add(
          "The output rests near no family's nominal: which family it is must be said with"
              + " --family.");
    } else if (cranks.isEmpty()) {
      reasons.add("No crank was found in this log.");
    }
    explain(sheets, reasons);
    reasons.add(LogReading.NOT_ABOVE_THE_BENCH);
    return reasons;
  }

  /** Columns that look like what is missing, and why they were not taken. */
  private static void explain(List<SheetFindings> sheets, List<String> reasons) {
    List<Column> columns = columns(sheets);
    boolean noOutput = columns.stream().noneMatch(c -> c.role() == Role.OUTPUT);
    boolean noSupply = columns.stream().noneMatch(c -> c.role() == Role.SUPPLY);
    if (noOutput && columns.stream().noneMatch(c -> c.role() == Role.COMMANDED)) {
      reasons.add("The output is not in this log.");
    }
    for (Column c : columns) {
      boolean telling = TELLING.contains(c.role());
      if (noOutput && telling) {
        reasons.add(
            "'" + c.title() + "' was taken for " + c.role().words() + " (" + c.why() + ").");
      }
    }
    if (noSupply) {
      reasons.add("No supply is in this log, so a weak battery cannot be told from a weak module.");
    }
  }

  private static Optional<String> disagreement(List<Crank> cranks, Conclusion conclusion) {
    Map<String, Long> others =
        cranks.stream()
            .filter(c -> c.conclusion() != conclusion)
            .collect(
                Collectors.groupingBy(
                    c -> c.conclusion().id(), java.util.TreeMap::new, Collectors.counting()));
    if (others.isEmpty()) {
      return Optional.empty();
    }
    String list =
        others.entrySet().stream()
            .map(e -> e.getValue() + " of " + cranks.size() + " is " + e.getKey())
            .collect(Collectors.joining(", "));
    return Optional.of("The cranks do not agree: " + list + ". Each was judged alone.");
  }

  private static void decidingDoubts(
      List<Crank> cranks, Conclusion conclusion, List<String> doubts) {
    cranks.stream()
        .filter(c -> c.conclusion() == conclusion)
        .findFirst()
        .ifPresent(c -> doubts.addAll(c.doubts()));
  }

  private static List<String> next(Conclusion conclusion, List<SheetFindings> sheets) {
    List<String> next = new ArrayList<>();
    if (conclusion != Conclusion.SUPPORTS_GOOD) {
      next.add(
          "Ask for two cranks of 5 s each, 60 s apart, with a charged battery and the charger off,"
              + " and fuel allowed if that is safe.");
      next.add(
          "Ask that only engine speed, the supply at the module and the output are ticked: the"
              + " fewer channels, the faster the log.");
    }
    if (sheets.stream().anyMatch(s -> s.sheet().time().assumed())) {
      next.add("Ask for an export with times in it.");
    }
    next.add("Test the module on the bench.");
    return next;
  }

  private static List<String> remarks(List<SheetFindings> sheets) {
    List<String> remarks = new ArrayList<>();
    for (SheetFindings s : sheets) {
      Dropped d = s.dropped();
      count(
          remarks, d.duplicates(), "row repeats", "rows repeat", "the one before and was left out");
      count(remarks, d.misplaced(), "row stood", "rows stood", "in the wrong place in time");
      count(
          remarks,
          d.clockSteps(),
          "time",
          "times",
          "the clock was set back: nothing is measured across");
      count(
          remarks,
          d.headers(),
          "further header",
          "further headers",
          "found: the recording was paused");
      count(
          remarks,
          d.noData(),
          "cell",
          "cells",
          "of judged columns without a number, or with one that means none");
      count(remarks, d.outOfRange(), "value", "values", "that no vehicle has, left out");
      count(remarks, d.others(), "line", "lines", "that are no data, left out");
    }
    return remarks;
  }

  private static void count(List<String> remarks, long n, String one, String several, String what) {
    if (n > 0) {
      remarks.add(n + " " + (n == 1 ? one : several) + " " + what + ".");
    }
  }
}
