package corewright.bench.run;

import corewright.bench.port.Digitizer;
import corewright.bench.record.RunEnd;
import corewright.measures.Measurement;
import corewright.profiles.Step;
import java.util.List;

/** Follows a run, for a console or a command line. Called on the engine's thread: be quick. */
public interface RunListener {

  /** Follows nothing. */
  RunListener NONE = new RunListener() {};

  /** All guards have been asked. */
  default void guarded(List<GuardFinding> findings) {}

  /**
   * Sampling begins; again when everything was switched off and the way out is watched more slowly.
   * Samples count from 0 each time.
   */
  default void sampling(List<Digitizer.Channel> channels, double rate_Hz) {}

  /**
   * A step begins.
   *
   * @param index from 0
   * @param count steps of the profile
   */
  default void step(Step step, int index, int count) {}

  /** A frame has arrived, was kept, and tripped nothing. */
  default void frame(Digitizer.Frame frame) {}

  /** The case was at this temperature, where a thermometer is there. */
  default void caseAt(Measurement temperature) {}

  /** How far the profile is, s; after each frame. */
  default void progress(double done_s, double total_s) {}

  /**
   * The bench was taken to its safe state; {@code troubles} is empty if all of it was confirmed.
   */
  default void safe(List<String> troubles) {}

  /** The run has ended. */
  default void ended(RunEnd end) {}
}
