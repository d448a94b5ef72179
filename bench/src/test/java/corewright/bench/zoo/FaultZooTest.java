package corewright.bench.zoo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A very small zoo; {@code .ci/soak/fault-zoo} keeps a large one, with other seeds each time. */
class FaultZooTest {

  @Test
  void faultsAreFoundGoodUnitsPassAndNoBenchIsBlamedOnTheUnit() {
    int pty = Integer.getInteger("zoo.pty", 0);
    FaultZoo zoo =
        new FaultZoo(Long.getLong("zoo.seed", 419_001), Boolean.getBoolean("zoo.tell"))
            .faulty(Integer.getInteger("zoo.faulty", 2), pty)
            .good(Integer.getInteger("zoo.good", 1))
            .benchFaults(Integer.getInteger("zoo.benchFaults", 1));
    if (Boolean.getBoolean("zoo.tell")) {
      System.out.print(zoo.calibration().table());
      System.out.println(zoo);
    }
    assertEquals(0, zoo.passed(), "passed in the range of FAIL");
    assertTrue(zoo.goodFailed() <= 0.005, "good units failed");
    assertEquals(0, zoo.blamed(), "blamed for the bench");
    assertEquals(0, zoo.otherwiseOverPty(), "another verdict over the pty");
    assertTrue(zoo.named() >= 0.6, "named");
    assertTrue(zoo.groupRight() >= 0.85, "right of those named");
  }
}
