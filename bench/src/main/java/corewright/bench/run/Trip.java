package corewright.bench.run;

import corewright.bench.record.RunEnd;
import java.util.Optional;
import java.util.function.Supplier;

/** Looks at every frame as it arrives and says when the run must end. Keeps what it must count. */
interface Trip {

  /** What it saw, if this frame ends the run. */
  Optional<Seen> look(FrameView view);

  /**
   * Why a run ends.
   *
   * @param trip the limit of the unit, or {@link RunEnd.Trip#NONE} for a fault of the bench
   * @param sample of the frame that shows it
   * @param saw one sentence, made once the safe state has been commanded
   * @param remedy one sentence
   */
  record Seen(RunEnd.Trip trip, int sample, Supplier<String> saw, String remedy) {

    RunEnd end(FrameView view, String step) {
      RunEnd.Kind kind = trip == RunEnd.Trip.NONE ? RunEnd.Kind.BENCH_FAULT : RunEnd.Kind.TRIPPED;
      return new RunEnd(kind, trip, step, view.at_s(sample), words(), remedy);
    }

    /** A sentence that cannot be made must not hide that a limit was passed. */
    private String words() {
      try {
        return saw.get();
      } catch (RuntimeException broken) {
        return "A limit was passed, and what was seen could not be put into words: " + broken + ".";
      }
    }
  }

  static Optional<Seen> fault(String saw, String remedy) {
    return Optional.of(new Seen(RunEnd.Trip.NONE, 0, () -> saw, remedy));
  }
}
