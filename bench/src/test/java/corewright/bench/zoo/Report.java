package corewright.bench.zoo;

import corewright.bench.diagnose.Counting;
import corewright.bench.record.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What a visit to the zoo comes to. */
record Report(List<Seen> faulty, List<Seen> good, List<Seen> benchFaults) {

  /** Passed, or left without a verdict, though the physics fails it. */
  long passed() {
    return count(faulty, Seen::missed);
  }

  double goodFailed() {
    return share(
        count(good, s -> s.verdict() == Verdict.FAIL || s.verdict() == Verdict.UNSAFE),
        good.size());
  }

  long blamed() {
    return count(benchFaults, Seen::bad);
  }

  double named() {
    return share(count(faulty, s -> s.named().isPresent()), faulty.size());
  }

  double groupRight() {
    return share(count(faulty, Seen::right), count(faulty, s -> s.named().isPresent()));
  }

  long otherwiseOverPty() {
    return count(faulty, Seen::otherwiseOverPty);
  }

  Calibration calibration() {
    Calibration calibration = new Calibration();
    faulty.forEach(
        s ->
            s.diagnosis()
                .ifPresent(
                    d ->
                        d.candidates()
                            .forEach(c -> calibration.add(c.probability(), s.isGroup(c)))));
    return calibration;
  }

  /** Both tables anew, from these units. */
  String tables() {
    return Counting.siblings(good.stream().map(Seen::sample).toList())
        + "\n"
        + Counting.signatures(faulty.stream().map(Seen::sample).toList());
  }

  @Override
  public String toString() {
    Calibration calibration = calibration();
    return String.format(
        Locale.ROOT,
        "fault-zoo: faulty=%d passed=%d good=%d goodFailed=%.4f benchFaults=%d blamed=%d"
            + " named=%.3f groupRight=%.3f marginal=%d overPty=%d otherwise=%d brier=%.3f ece=%.3f",
        faulty.size(),
        passed(),
        good.size(),
        goodFailed(),
        benchFaults.size(),
        blamed(),
        named(),
        groupRight(),
        count(faulty, s -> s.truth() == Verdict.MARGINAL),
        count(faulty, s -> s.overPty().isPresent()),
        otherwiseOverPty(),
        calibration.brier(),
        calibration.expectedError());
  }

  /** Everything that is not as it should be, a line each. */
  static Stream<String> worthALook(Object told) {
    return told instanceof Seen seen ? line(seen).stream() : Stream.empty();
  }

  private static List<String> line(Seen seen) {
    if (seen.animal().fault().isPresent()) {
      return seen.worthALook().stream().toList();
    }
    return seen.bad()
        ? List.of(seen.verdict() + " " + seen.animal().what() + " " + seen.reasons())
        : List.of();
  }

  private static long count(List<Seen> all, Predicate<Seen> which) {
    return all.stream().filter(which).count();
  }

  private static double share(long part, long of) {
    return part / (double) Math.max(1, of);
  }
}
