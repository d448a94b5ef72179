package corewright.bench.log;

import corewright.bench.log.table.Row;

/**
 * The engine turns at a starter's pace: from 60 to 400 a minute, with 40 to let go. An engine that
 * runs out passes that too and is no crank. Common practice, no source.
 */
final class SpeedSign implements CrankSign {
  private static final double ON = 60;
  private static final double OFF = 40;
  private static final double RUNS = 400;

  private final int channel;
  private boolean ran;
  private boolean turning;
  private double fastest;

  SpeedSign(int channel) {
    this.channel = channel;
  }

  /** The fastest that was seen, 1/min. */
  double fastest() {
    return fastest;
  }

  @Override
  public Says look(Row row) {
    double speed = row.value(channel);
    if (Double.isNaN(speed)) {
      return Says.NOTHING;
    }
    fastest = Math.max(fastest, speed);
    if (speed > RUNS) {
      ran = true;
      turning = false;
      return Says.RUNNING;
    }
    if (speed < OFF || (speed < ON && !turning)) {
      ran = false;
      turning = false;
      return Says.STILL;
    }
    turning = true;
    return ran ? Says.RUNNING : Says.CRANKING;
  }

  @Override
  public void reset() {
    ran = false;
    turning = false;
  }

  @Override
  public double pause_s() {
    return 1;
  }

  @Override
  public Attempt.FoundBy foundBy() {
    return Attempt.FoundBy.SPEED;
  }

  @Override
  public boolean isOne(Attempt attempt) {
    return attempt.length_s() >= 0.3;
  }
}
