package corewright.bench.run;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** Set by a person, from any thread; the engine looks at it before every frame. */
public final class Stop {
  private final AtomicReference<String> why = new AtomicReference<>("");

  /**
   * Asks for the run to end in the safe state. The first reason stays.
   *
   * @param reason one sentence, as {@code The operator pressed Ctrl-C.}
   */
  public void request(String reason) {
    why.compareAndSet("", reason);
  }

  /** The reason, once there is one. */
  public Optional<String> requested() {
    return Optional.ofNullable(why.get()).filter(reason -> !reason.isEmpty());
  }
}
