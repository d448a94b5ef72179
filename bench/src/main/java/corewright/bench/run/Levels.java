package corewright.bench.run;

import corewright.bench.port.Load;
import corewright.bench.port.Source;
import corewright.profiles.Step;
import java.util.Optional;

/**
 * What source and load have been told, so that only changes are sent. The source is given room
 * before the load takes it, and the load lets go before room is taken away.
 */
final class Levels {
  private final BenchInstruments bench;
  private double input_V;
  private double limit_A;
  private double most_V;
  private double load_A;
  private boolean loadOn;
  private Optional<Source.Swing> swing = Optional.empty();

  Levels(BenchInstruments bench) {
    this.bench = bench;
  }

  /** The load current that was asked for, A; 0 while the load is off. */
  double load_A() {
    return loadOn ? load_A : 0;
  }

  /** The most that the source was set to in this run, V. */
  double most_V() {
    return most_V;
  }

  /** Source set and switched on, relay closed, discharge lifted: from here on the unit is live. */
  void powerUp(double limit) {
    bench.discharge().discharge(false);
    bench.source().set(0, limit);
    bench.relay().relay(true);
    bench.source().output(true);
    input_V = 0;
    limit_A = limit;
  }

  void source(double voltage, double limit) {
    if (voltage != input_V || limit != limit_A) {
      bench.source().set(voltage, limit);
      input_V = voltage;
      most_V = Math.max(most_V, voltage);
      limit_A = limit;
    }
  }

  /** Takes both to what a hold asks for. */
  void hold(Step step) {
    to(step.input_V(), step.inputLimit_A(), step.load_A());
  }

  /** Takes both to these levels. */
  void to(double input, double limit, double current) {
    if (current >= load_A()) {
      source(input, limit);
      load(current);
    } else {
      load(current);
      source(input, limit);
    }
  }

  /** The load pulses from a level to a higher one; for whoever asks it now draws the higher. */
  void pulse(Load.Pulses pulses) {
    bench.load().pulse(pulses);
    load_A = pulses.high_A();
    if (!loadOn) {
      bench.load().input(true);
      loadOn = true;
    }
  }

  /** No load, and a constant one from here on. */
  void steady() {
    load(0);
    bench.load().steady();
    load_A = 0;
  }

  /** The source stands still, unless it already swings as is wanted next. */
  void still(Optional<Source.Swing> unless) {
    if (swing.isPresent() && !swing.equals(unless)) {
      bench.source().steady();
      swing = Optional.empty();
    }
  }

  /** The source swings so about its level; empty: it stands still. */
  void swing(Optional<Source.Swing> wanted) {
    still(wanted);
    if (wanted.isPresent() && swing.isEmpty()) {
      bench.source().swing(wanted.get());
      swing = wanted;
      most_V = Math.max(most_V, wanted.get().high_V());
    }
  }

  /** Load and source off, discharge on, the relay as it is: the output runs down. */
  void unpower() {
    load(0);
    bench.source().output(false);
    bench.discharge().discharge(true);
  }

  /** Source off, everything else as it is. */
  void noFeed() {
    bench.source().output(false);
  }

  /** Discharge lifted, the source set and still off. */
  void ready(double input, double limit) {
    bench.discharge().discharge(false);
    source(input, limit);
  }

  private void load(double current) {
    if (current > 0 && current != load_A) {
      bench.load().set(current);
      load_A = current;
    }
    if (current > 0 != loadOn) {
      bench.load().input(current > 0);
      loadOn = current > 0;
    }
  }

  /** Everything has been switched off behind our back. */
  void forget() {
    input_V = 0;
    limit_A = 0;
    load_A = 0;
    loadOn = false;
    swing = Optional.empty();
  }
}
