package corewright.bench.log;

import corewright.bench.log.table.Row;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Without engine speed: the supply lies 1 V (2 V at 24 V) under its rest for at least 0.8 s, and
 * comes back. Common practice, no source.
 */
final class SupplySign implements CrankSign {
  private static final double DROP_V = 1;
  private static final double BACK_V = 0.7;
  private static final double SHORTEST_S = 0.8;

  /** A battery at rest has no more than this; above it, a generator charges, V at 12 V. */
  private static final double FULL_V = 12.8;

  /** Seconds and samples from which the rest is taken. */
  private static final double REST_S = 8;

  private static final int REST_SAMPLES = 60;

  /** Whatever stays down longer is a load and no starter, s. */
  private static final double LONGEST_S = 30;

  private final int channel;
  private final Deque<double[]> rest = new ArrayDeque<>();
  private boolean down;
  private double since_s;

  SupplySign(int channel) {
    this.channel = channel;
  }

  @Override
  public Says look(Row row) {
    double supply_V = row.value(channel);
    if (Double.isNaN(supply_V)) {
      return Says.NOTHING;
    }
    double rest_V = rest_V();
    double twice = rest_V > 18 ? 2 : 1;
    double full_V = Math.min(rest_V, FULL_V * twice);
    boolean under = supply_V <= full_V - (down ? BACK_V : DROP_V) * twice;
    if (under && !rest.isEmpty()) {
      since_s = down ? since_s : row.t_s();
      down = true;
      if (row.t_s() - since_s > LONGEST_S) {
        reset();
      }
      return Says.CRANKING;
    }
    down = false;
    rest.addLast(new double[] {row.t_s(), supply_V});
    while (rest.size() > REST_SAMPLES || rest.getFirst()[0] < row.t_s() - REST_S) {
      rest.removeFirst();
    }
    return Says.STILL;
  }

  private double rest_V() {
    return Stats.median(rest.stream().mapToDouble(r -> r[1]).sorted().toArray());
  }

  @Override
  public void reset() {
    rest.clear();
    down = false;
  }

  @Override
  public double pause_s() {
    return 0.3;
  }

  @Override
  public Attempt.FoundBy foundBy() {
    return Attempt.FoundBy.SUPPLY;
  }

  @Override
  public boolean isOne(Attempt attempt) {
    return attempt.length_s() >= SHORTEST_S && attempt.length_s() <= LONGEST_S;
  }
}
