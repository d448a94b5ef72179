package corewright.measures.reliability;

/**
 * How long some units have lasted so far.
 *
 * @param time above 0; hours, months in service, kilometres
 * @param failed whether they failed then; if not, they were in service and well (a suspension)
 * @param count how many units, at least 1
 */
public record Lifetime(double time, boolean failed, long count) {
  public Lifetime {
    if (!(time > 0) || Double.isInfinite(time)) {
      throw new IllegalArgumentException(
          "a lifetime is above 0 and finite, not " + time + "; a unit that never ran has none");
    }
    if (count < 1) {
      throw new IllegalArgumentException("a lifetime of " + count + " units");
    }
  }

  public static Lifetime failure(double time) {
    return new Lifetime(time, true, 1);
  }

  public static Lifetime suspension(double time) {
    return new Lifetime(time, false, 1);
  }
}
