package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Finding;
import corewright.bench.record.Judgement;
import corewright.bench.record.Verdict;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.profiles.Limit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A limit stands beside its reading with the reading's digits, and with a true minus. */
class FindingLinesTest {

  @Test
  void aLimitHasTheDigitsOfItsReading() {
    List<String> lines =
        FindingLines.of(
            judged(
                Verdict.PASS,
                finding(Quantity.UNDERSHOOT, 0.2459973577777778, Limit.Side.AT_MOST, 0.199, 0.0075),
                finding(Quantity.DRIFT, -6, Limit.Side.AT_LEAST, -0.035, 0.0005),
                finding(Quantity.PULSED_CAPACITANCE, 0.00035, Limit.Side.AT_LEAST, 0.00047, 1e-5),
                finding(Quantity.PIN_MISMATCHES, 0, Limit.Side.AT_MOST, 0, 0)));
    assertTrue(lines.get(0).contains("0.246 V or less"), lines.get(0));
    assertTrue(lines.get(1).contains("−6.000 V/min or more"), lines.get(1));
    assertTrue(lines.get(2).contains("0.00035 F or more"), lines.get(2));
    assertTrue(lines.get(3).contains(" 0 or less"), lines.get(3));
    assertEquals(
        1, lines.stream().mapToInt(l -> l.indexOf("conforms")).distinct().count(), "one column");
  }

  @Test
  void withoutAReadingALimitIsRoundedToFourFigures() {
    Limit limit = limit(Quantity.UNDERSHOOT, 0.2459973577777778, Limit.Side.AT_MOST);
    Finding none =
        new Finding(
            limit,
            -1,
            Optional.empty(),
            Finding.Outcome.NOT_MEASURED,
            Optional.empty(),
            Optional.empty(),
            "no step read it.");
    String line = FindingLines.of(judged(Verdict.INCOMPLETE, none)).get(0);
    assertTrue(line.contains("0.246 V or less") && line.endsWith("no step read it."), line);
  }

  private static Finding finding(Quantity q, double pass, Limit.Side side, double value, double u) {
    return new Finding(
        limit(q, pass, side),
        -1,
        Optional.of(new Measurement(value, u, q.unit())),
        Finding.Outcome.PASS,
        Optional.of(1.0),
        Optional.of(0.999),
        "");
  }

  private static Limit limit(Quantity quantity, double pass, Limit.Side side) {
    return new Limit("x", quantity, side, pass, pass, 0, 1e9, false, "a test");
  }

  private static Judgement judged(Verdict verdict, Finding... findings) {
    return new Judgement(
        Optional.of(verdict), Optional.empty(), "", List.of(findings), List.of("It did."));
  }
}
