package corewright.station.cli;

import corewright.bench.record.Finding;
import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.measures.Chance;
import corewright.measures.Figures;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Every reading that was held against a limit, one to a line, with the probability that the true
 * value conforms (JCGM 106, 6). A VOID run says nothing about the unit, and has no such lines.
 */
final class FindingLines {
  private FindingLines() {}

  static List<String> of(Judgement judgement) {
    boolean isVoid = judgement.verdict().equals(Optional.of(Verdict.VOID));
    return isVoid ? List.of() : judgement.findings().stream().map(FindingLines::line).toList();
  }

  private static String line(Finding finding) {
    Limit limit = finding.limit();
    String unit =
        finding.quantity().unit() == Unit.ONE ? "" : " " + finding.quantity().unit().symbol();
    return String.format(
            Locale.ROOT,
            "  %-12s %-38s %-24s %-22s %s",
            finding.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            finding.quantity().title()
                + (finding.hold() < 0 ? "" : ", hold " + (finding.hold() + 1)),
            finding.measurement().map(Figures::withU).orElse("—"),
            BigDecimal.valueOf(limit.pass()).stripTrailingZeros().toPlainString()
                + unit
                + (limit.side() == Limit.Side.AT_LEAST ? " or more" : " or less"),
            finding
                .conformity()
                .map(p -> "conforms with probability " + Chance.words(p))
                .orElse(finding.note()))
        .stripTrailing();
  }
}
