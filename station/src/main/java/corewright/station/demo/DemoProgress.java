package corewright.station.demo;

import corewright.bench.run.RunListener;

/** Follows a demonstration; the command line prints it, tests do not. */
public interface DemoProgress {

  /** Follows nothing. */
  DemoProgress NONE = new DemoProgress() {};

  /**
   * The next core is on the bench.
   *
   * @param index from 0
   */
  default void core(int index, int count, String tag, String family) {}

  /** What the core really is; for tests that ask the physics. */
  default void drawn(DemoCore.OnTheBench unit) {}

  /** A core was rebuilt and is tested as shipped. */
  default void rebuilt(String tag, String family) {}

  /** Follows each run. */
  default RunListener listener() {
    return RunListener.NONE;
  }
}
