package corewright.station.web.place;

import corewright.bench.record.Disposition;
import corewright.bench.triage.Sums;
import corewright.measures.Figures;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The sums of the three ways, and how wrong the chance could be. Amounts are prices and carry no ±.
 *
 * @param picture empty where no chance of success makes a difference
 */
public record SumPage(List<Account> accounts, Optional<Picture> picture) {

  /** One way: what it is made of, and what it brings. */
  public record Account(String way, List<Row> rows, String total, boolean best) {}

  /** One line of it. */
  public record Row(String words, String amount) {}

  /**
   * What a rebuild brings over its chance of success, 420 wide and 196 high; the floor is the least
   * that is accepted.
   *
   * @param spare how far the chance lies above what is enough, in words
   */
  public record Picture(
      String line,
      double floor,
      List<Double> strokes,
      String least,
      double now_x,
      double now_y,
      String now,
      double enough_x,
      String enough,
      double zero,
      String spare,
      String note) {}

  private static final double LEFT = 40;
  private static final double WIDTH = 330;
  private static final double TOP = 16;
  private static final double HEIGHT = 134;

  static Optional<SumPage> of(Sums sums, Disposition decided) {
    if (!(sums.money().sale() > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new SumPage(
            List.of(
                account("REBUILD", sums.rebuildLines(), sums.rebuild(), sums, decided),
                account("REPLACE", sums.replaceLines(), sums.replace(), sums, decided),
                account("RETURN", sums.giveBackLines(), sums.giveBack(), sums, decided)),
            picture(sums)));
  }

  private static Account account(
      String way, List<Sums.Line> lines, double total, Sums sums, Disposition decided) {
    return new Account(
        way,
        lines.stream().map(l -> new Row(l.words(), Figures.number(l.amount(), 0))).toList(),
        Figures.number(total, 0) + " " + sums.money().currency(),
        decided.name().equals(way));
  }

  private static Optional<Picture> picture(Sums sums) {
    double enough = sums.enough();
    if (!(enough >= 0 && enough <= 1)) {
      return Optional.empty();
    }
    double low = Math.min(0, sums.with(0).rebuild());
    double high = Math.max(sums.with(1).rebuild(), sums.least());
    double scale = HEIGHT / (high - low);
    double from_y = TOP + (high - sums.with(0).rebuild()) * scale;
    double to_y = TOP + (high - sums.with(1).rebuild()) * scale;
    double spare = sums.p() - enough;
    return Optional.of(
        new Picture(
            String.format(Locale.ROOT, "M%.0f %.1fL%.0f %.1f", LEFT, from_y, LEFT + WIDTH, to_y),
            TOP + (high - sums.least()) * scale,
            java.util.stream.IntStream.rangeClosed(0, 32).mapToObj(i -> LEFT + i * 10.2).toList(),
            "least we accept, " + Figures.number(sums.least(), 0),
            x(sums.p()),
            TOP + (high - sums.rebuild()) * scale,
            Figures.number(sums.p(), 2),
            x(enough),
            Figures.number(enough, 2),
            TOP + high * scale,
            Figures.number(Math.abs(spare), 2) + (spare >= 0 ? " to spare" : " too little"),
            spare >= 0
                ? "The chance of success may be wrong by that much before a rebuild no longer pays."
                : "The chance of success would have to be better by that much for a rebuild to"
                    + " pay."));
  }

  private static double x(double p) {
    return LEFT + p * WIDTH;
  }
}
