package corewright.bench.triage;

/** What it would bring, and whether it can be done. */
public record Means(Economy economy, NextTest nextTest, Parts parts, Preventive preventive) {

  /** A rebuild pays and its parts lie there; nobody wants a good unit rebuilt. */
  public static final Means PLAIN =
      new Means(Economy.REBUILD_PAYS, NextTest.NOT_WORTH, Parts.IN_STOCK, Preventive.NOT_WANTED);

  public Means with(Economy other) {
    return new Means(other, nextTest, parts, preventive);
  }

  /** What the sums say; see {@link Sums#economy}. */
  public enum Economy {
    REBUILD_PAYS,
    /** A rebuild does not, a replacement does. */
    REPLACE_PAYS,
    NEITHER_PAYS
  }

  /** Whether one more test would bring more than it costs; see {@link Sums#oneMoreTest}. */
  public enum NextTest {
    NOT_WORTH,
    /** The fault's group is open, and to know it would change what is done. */
    WORTH
  }

  /** Whether the promised date can be kept. */
  public enum Parts {
    IN_STOCK,
    /** Missing; an exchange unit is there, and the customer agrees to it. */
    EXCHANGE_AGREED,
    MISSING
  }

  /** Whether a unit that passes shall be rebuilt all the same. */
  public enum Preventive {
    NOT_WANTED,
    WANTED
  }
}
