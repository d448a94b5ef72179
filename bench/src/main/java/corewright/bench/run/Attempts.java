package corewright.bench.run;

import java.util.ArrayList;
import java.util.List;

/** Does things one after the other, each whatever became of the others. */
final class Attempts {
  private final List<String> troubles = new ArrayList<>();

  /** Any failure becomes a sentence. */
  Attempts attempt(String what, Runnable action) {
    try {
      action.run();
    } catch (RuntimeException failed) {
      troubles.add(what + " failed: " + failed.getMessage());
    }
    return this;
  }

  List<String> troubles() {
    return List.copyOf(troubles);
  }
}
