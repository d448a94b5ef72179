package corewright.bench.triage;

import corewright.bench.record.Diagnosis;
import corewright.measures.Chance;
import corewright.measures.Figures;
import corewright.profiles.Economics;
import java.util.List;
import java.util.Optional;

/**
 * Expected value of each way, in the shop's own currency.
 *
 * @param p probability that a rebuild of this unit becomes sellable, 0 to 1
 * @param core value of this core where the unit is replaced
 * @param warrantyNew expected warranty cost of an exchange unit
 */
public record Sums(Economics money, double p, double core, double warrantyNew) {

  /** A rebuild must bring this part of the sale, or the owner overrides. */
  private static final double LEAST_OF_SALE = 0.15;

  /**
   * What a telling test moves the probability by, and how long it takes (the trade's judgement).
   */
  private static final double TELLING_SWING = 0.2;

  private static final double TEST_H = 1.0 / 3;

  public Sums {
    if (!(p >= 0 && p <= 1)) {
      throw new IllegalArgumentException(
          "probability of a sellable rebuild is not in [0, 1]: " + p);
    }
  }

  /** With the family's own yield, harvest value and warranty cost. */
  public static Sums of(Economics money) {
    return new Sums(money, money.yield(), money.harvest(), money.warranty());
  }

  /** The same with another probability of success. */
  public Sums with(double other) {
    return new Sums(money, other, core, warrantyNew);
  }

  /** p·(S − w) + (1 − p)·H − K − L·r − T. */
  public double rebuild() {
    return p * (money.sale() - money.warranty()) + (1 - p) * money.harvest() - cost();
  }

  /** S of an exchange unit − its cost + value of this core − its warranty cost. */
  public double replace() {
    return money.exchange() - money.exchangeCost() + core - warrantyNew;
  }

  /** Evaluation fee − freight and handling. */
  public double giveBack() {
    return money.evaluation() - money.freight();
  }

  /** Probability of success from which on a rebuild is worth more than the best other way. */
  public double breakEven() {
    double other = Math.max(replace(), giveBack());
    return (cost() - money.harvest() + other) / (money.sale() - money.warranty() - money.harvest());
  }

  /**
   * What one more test brings that moves {@code p} up or down by {@code swing} with equal chance,
   * less its cost: worth doing above 0. Where there is no room for the swing, it is smaller: a test
   * does not change what is expected before it was made.
   */
  public double oneMoreTest(double swing, double cost) {
    double other = Math.max(replace(), giveBack());
    double room = Math.min(swing, Math.min(p, 1 - p));
    double better = Math.max(other, with(p + room).rebuild());
    double worse = Math.max(other, with(p - room).rebuild());
    return (better + worse) / 2 - Math.max(other, rebuild()) - cost;
  }

  /**
   * Whether one more test is worth it: where the group at fault is open and a measurement would
   * tell, it moves {@code p} by a fifth for a third of an hour.
   */
  public Means.NextTest nextTest(Optional<Diagnosis> diagnosis) {
    boolean open = diagnosis.filter(d -> !d.determined() && d.next().isPresent()).isPresent();
    return open && oneMoreTest(TELLING_SWING, TEST_H * money.rate_perHour()) > 0
        ? Means.NextTest.WORTH
        : Means.NextTest.NOT_WORTH;
  }

  /** What the table looks at. */
  public Means.Economy economy() {
    if (rebuild() >= least()) {
      return Means.Economy.REBUILD_PAYS;
    }
    return replace() > 0 ? Means.Economy.REPLACE_PAYS : Means.Economy.NEITHER_PAYS;
  }

  /** The least that a rebuild must bring, or the owner overrides. */
  public double least() {
    return LEAST_OF_SALE * money.sale();
  }

  /** Probability of success from which on a rebuild brings {@link #least}. */
  public double enough() {
    return (cost() - money.harvest() + least())
        / (money.sale() - money.warranty() - money.harvest());
  }

  /**
   * One line of a sum.
   *
   * @param words what it is for, as {@code parts kit}
   * @param amount in the family's currency; negative where it is spent
   */
  public record Line(String words, double amount) {}

  /** What {@link #rebuild} is made of. */
  public List<Line> rebuildLines() {
    String success = Figures.number(p, 2);
    return List.of(
        new Line(success + " × sold, less warranty", p * (money.sale() - money.warranty())),
        new Line(Figures.number(1 - p, 2) + " × harvested instead", (1 - p) * money.harvest()),
        new Line("parts kit", -money.kit()),
        new Line(
            Figures.number(money.labour_h(), 1)
                + " h at "
                + Figures.number(money.rate_perHour(), 0),
            -money.labour_h() * money.rate_perHour()),
        new Line("test and burn-in", -money.test()));
  }

  /** What {@link #replace} is made of. */
  public List<Line> replaceLines() {
    return List.of(
        new Line("exchange price", money.exchange()),
        new Line("unit from the shelf", -money.exchangeCost()),
        new Line("value of this core", core),
        new Line("warranty", -warrantyNew));
  }

  /** What {@link #giveBack} is made of. */
  public List<Line> giveBackLines() {
    return List.of(
        new Line("evaluation fee", money.evaluation()),
        new Line("freight and handling", -money.freight()));
  }

  /** The three sums, each a sentence. */
  public List<String> sentences() {
    return List.of(
        "A rebuild succeeds with probability "
            + Chance.words(p)
            + " and brings "
            + amount(rebuild())
            + breakEvenWords(),
        "A replacement brings " + amount(replace()) + ".",
        "Sending it back brings " + amount(giveBack()) + ".");
  }

  /** Nothing where no probability makes the difference, as in a family without prices. */
  private String breakEvenWords() {
    double even = breakEven();
    return even >= 0 && even <= 1
        ? "; from " + Figures.number(even, 2) + " on it brings more than any other way."
        : ".";
  }

  private double cost() {
    return money.kit() + money.labour_h() * money.rate_perHour() + money.test();
  }

  private String amount(double value) {
    return (value > 0 ? "+" : "") + Figures.number(value, 0) + " " + money.currency();
  }
}
