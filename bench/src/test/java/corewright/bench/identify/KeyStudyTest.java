package corewright.bench.identify;

import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.profiles.Catalogue;
import org.junit.jupiter.api.Test;

/** The keys of the three families on simulated cores; {@code .ci/soak/key} runs more of them. */
class KeyStudyTest {

  @Test
  void theKeysIdentifyMostCoresAlmostNeverWrongWithFewQuestions() {
    KeyStudy study =
        KeyStudy.of(
            Catalogue.ofHome().families(),
            Integer.getInteger("corewright.cores", 300),
            Long.getLong("corewright.seed", 1));
    System.out.println(study);
    assertTrue(study.identified() >= 0.8, study.toString());
    assertTrue(study.wrong() < 0.01, study.toString());
    assertTrue(study.questions() < 4, study.toString());
    assertTrue(study.questions() < study.fixedOrder(), study.toString());
  }
}
