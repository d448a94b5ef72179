package corewright.bench.zoo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A very small zoo; {@code .ci/soak/fault-zoo} keeps a large one, with other seeds each time. */
class FaultZooTest {

  @Test
  void faultsAreFoundGoodUnitsPassAndNoBenchIsBlamedOnTheUnit() throws IOException {
    boolean tells = Boolean.getBoolean("zoo.tell");
    Report zoo;
    try (Crew crew = new Crew(Integer.getInteger("zoo.threads", 1), told -> tell(tells, told))) {
      FaultZoo all = new FaultZoo(Long.getLong("zoo.seed", 419_001), crew);
      int pty = Integer.getInteger("zoo.pty", 0);
      zoo =
          new Report(
              all.faulty(Integer.getInteger("zoo.faulty", 2), pty),
              all.good(Integer.getInteger("zoo.good", 1)),
              all.benchFaults(Integer.getInteger("zoo.benchFaults", 1)));
    }
    if (Boolean.getBoolean("zoo.count")) {
      System.out.print(zoo.tables());
    }
    if (tells) {
      System.out.print(zoo.calibration().table());
      System.out.println(zoo);
    }
    Optional<String> plot = Optional.ofNullable(System.getProperty("zoo.plot"));
    if (plot.isPresent()) {
      Files.writeString(Path.of(plot.get()), CalibrationPlot.of(zoo.calibration()));
    }
    assertEquals(0, zoo.passed(), "passed in the range of FAIL");
    assertTrue(zoo.goodFailed() <= 0.005, "good units failed");
    assertEquals(0, zoo.blamed(), "blamed for the bench");
    assertEquals(0, zoo.otherwiseOverPty(), "another verdict over the pty");
    if (!zoo.faulty().isEmpty()) {
      assertTrue(zoo.named() >= 0.6, "named");
      assertTrue(zoo.groupRight() >= 0.85, "right of those named");
    }
  }

  private static void tell(boolean tells, Object told) {
    if (tells) {
      Object one = told instanceof Optional<?> maybe ? maybe.orElse(null) : told;
      Report.worthALook(one).forEach(System.out::println);
    }
  }
}
