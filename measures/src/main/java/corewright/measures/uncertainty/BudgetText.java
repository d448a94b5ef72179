package corewright.measures.uncertainty;

import corewright.measures.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A budget as lines of text, one for each input. Decimal point always. */
public final class BudgetText {
  private BudgetText() {}

  /**
   * Head, one line for each input, correlations, result.
   *
   * @param level of confidence of the expanded uncertainty, for example 0.95
   */
  public static List<String> lines(Budget budget, double level) {
    Inputs inputs = budget.inputs();
    int width = 8;
    for (int i = 0; i < inputs.size(); i++) {
      width = Math.max(width, inputs.get(i).name().length());
    }
    String unit = budget.result().unit().symbol();
    List<String> lines = new ArrayList<>();
    lines.add(
        row(
            width,
            "quantity",
            "estimate",
            "u",
            "distribution",
            "ν",
            "sensitivity",
            "u(y)",
            "share"));
    for (int i = 0; i < inputs.size(); i++) {
      lines.add(line(budget, i, width));
    }
    for (int i = 0; i < inputs.size(); i++) {
      for (int j = i + 1; j < inputs.size(); j++) {
        if (inputs.correlation(i, j) != 0) {
          lines.add(
              "correlation of %s and %s: %s"
                  .formatted(
                      inputs.get(i).name(),
                      inputs.get(j).name(),
                      digits(inputs.correlation(i, j), 3)));
        }
      }
    }
    lines.add(
        "result %s %s, u = %s %s, ν = %s, k = %s, U = %s %s (%s %%)"
            .formatted(
                digits(budget.result().value(), 8),
                unit,
                digits(budget.result().u(), 3),
                unit,
                freedom(budget.effectiveFreedom()),
                digits(budget.coverageFactor(level), 3),
                digits(budget.expanded(level), 3),
                unit,
                digits(100 * level, 4)));
    return lines;
  }

  private static String line(Budget budget, int i, int width) {
    Input input = budget.inputs().get(i);
    String unit = input.estimate().unit().symbol();
    double u = budget.result().u();
    double part = budget.contribution(i);
    return row(
        width,
        input.name(),
        digits(input.value(), 8) + " " + unit,
        digits(input.u(), 3) + " " + unit,
        input.distribution().name().toLowerCase(Locale.ROOT),
        freedom(input.freedom()),
        digits(budget.sensitivity(i), 4) + ratio(budget.result().unit(), unit),
        digits(part, 3) + " " + budget.result().unit().symbol(),
        u == 0 ? "" : digits(100 * part * part / (u * u), 3) + " %");
  }

  private static String ratio(Unit result, String input) {
    return result.symbol().equals(input) ? "" : " " + result.symbol() + "/" + input;
  }

  private static String freedom(double freedom) {
    return freedom > 1e5 ? "∞" : digits(freedom, 3);
  }

  private static String row(int width, String... cells) {
    StringBuilder row = new StringBuilder(pad(cells[0], width));
    for (int i = 1; i < cells.length; i++) {
      row.append("  ").append(pad(cells[i], 14));
    }
    return row.toString().stripTrailing();
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  /** So many significant digits, without trailing zeros. */
  private static String digits(double value, int significant) {
    if (value == 0) {
      return "0";
    }
    BigDecimal rounded =
        new BigDecimal(value).round(new MathContext(significant)).stripTrailingZeros();
    boolean plain = Math.abs(rounded.precision() - rounded.scale()) <= 8;
    return (plain ? rounded.toPlainString() : String.format(Locale.ROOT, "%.3g", value))
        .replace('-', '−');
  }
}
