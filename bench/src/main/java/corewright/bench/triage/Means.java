package corewright.bench.triage;

/** What it would bring, and whether it can be done. */
public record Means(Economy economy, Parts parts, Preventive preventive) {

  /** A rebuild pays and its parts lie there; nobody wants a good unit rebuilt. */
  public static final Means PLAIN =
      new Means(Economy.REBUILD_PAYS, Parts.IN_STOCK, Preventive.NOT_WANTED);

  public Means with(Economy other) {
    return new Means(other, parts, preventive);
  }

  /** What the sums say; see {@link Sums#economy}. */
  public enum Economy {
    REBUILD_PAYS,
    /** A rebuild does not, a replacement does. */
    REPLACE_PAYS,
    NEITHER_PAYS
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
