package corewright.station.demo;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.station.work.Refused;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Each emulated instrument has a line and a thread that serves it until it is hung up. */
class CommissioningBenchTest {
  @Test
  void aBenchThatIsRefusedLeavesNoInstrumentBehind() throws InterruptedException {
    Set<Thread> before = serving();
    Refused refused =
        assertThrows(Refused.class, () -> CommissioningBench.open("sd48", "", "lode", 1));
    assertTrue(refused.getMessage().contains("'lode'"), refused.getMessage());
    assertTrue(refused.remedy().contains("load, source"), refused.remedy());
    Set<Thread> left = serving();
    left.removeAll(before);
    for (Thread thread : left) {
      thread.join(2000);
      assertFalse(thread.isAlive(), thread.getName());
    }
  }

  private static Set<Thread> serving() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(t -> t.getName().startsWith("emulated-"))
        .collect(Collectors.toSet());
  }
}
