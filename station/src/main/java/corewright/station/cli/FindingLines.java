package corewright.station.cli;

import corewright.bench.record.Finding;
import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.measures.Chance;
import corewright.measures.Figures;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Every reading that was held against a limit, one to a line, with the probability that the true
 * value conforms (JCGM 106, 6). A VOID run says nothing about the unit, and has no such lines.
 */
final class FindingLines {
  private static final int SIGNIFICANT = 4;

  private FindingLines() {}

  static List<String> of(Judgement judgement) {
    if (judgement.verdict().equals(Optional.of(Verdict.VOID))) {
      return List.of();
    }
    int longest = judgement.findings().stream().mapToInt(f -> what(f).length()).max().orElse(1);
    return judgement.findings().stream().map(f -> line(f, longest)).toList();
  }

  private static String line(Finding finding, int longest) {
    return String.format(
            Locale.ROOT,
            "  %-12s %-" + longest + "s %-24s %-22s %s",
            finding.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            what(finding),
            finding.measurement().map(Figures::withU).orElse("—"),
            limit(finding),
            finding
                .conformity()
                .map(p -> "conforms with probability " + Chance.words(p))
                .orElse(finding.note()))
        .stripTrailing();
  }

  private static String what(Finding finding) {
    return finding.quantity().title()
        + (finding.hold() < 0 ? "" : ", hold " + (finding.hold() + 1));
  }

  /** With the digits of its reading; a limit for each ampere of a step has none of its own. */
  private static String limit(Finding finding) {
    double pass = finding.limit().pass();
    Unit unit = finding.quantity().unit();
    String words =
        unit == Unit.ONE
            ? Figures.plain(pass)
            : finding
                .measurement()
                .map(m -> Figures.like(pass, m))
                .orElseGet(() -> rounded(pass) + " " + unit.symbol());
    return words + (finding.limit().side() == Limit.Side.AT_LEAST ? " or more" : " or less");
  }

  private static String rounded(double pass) {
    BigDecimal rounded = BigDecimal.valueOf(pass).round(new MathContext(SIGNIFICANT));
    return rounded.stripTrailingZeros().toPlainString().replace('-', '−');
  }
}
