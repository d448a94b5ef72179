package corewright.bench.run;

import corewright.bench.port.InstrumentFault;
import java.util.Optional;

/**
 * Waits for an answer while samples are taken, and their trips looked at. No frame is asked for
 * before the answer is there where the digitizer's time stands still: the order is part of the run.
 */
final class AsideWait {

  private AsideWait() {}

  /**
   * The answer.
   *
   * @throws InstrumentFault if there is none in time
   */
  static <T> T until(Aside.Question<T> question, Sampler sampler, String role) {
    double asked_s = sampler.at_s();
    while (true) {
      Optional<T> answer = question.answer();
      if (answer.isPresent()) {
        return answer.get();
      }
      if (question.isOverdue(sampler.at_s() - asked_s)) {
        throw new InstrumentFault(
            role,
            "asking it",
            "it has said nothing for " + Aside.SILENCE.toSeconds() + " s",
            "Check its cable and that it is on.");
      }
      sampler.next();
    }
  }
}
