package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What of the safe state could not be confirmed is said with what a person does then. */
class RunProgressTest {
  @Test
  void aBenchThatIsNotSafeIsTakenToBeLiveUntilSomebodyHasMeasured() {
    StringWriter said = new StringWriter();
    RunProgress progress = new RunProgress(new PrintWriter(said), false, "U-000012");
    progress.safe(List.of());
    assertEquals("", said.toString().strip());
    progress.safe(List.of("Switching the source off failed: no answer."));
    List<String> lines = said.toString().strip().lines().map(String::strip).toList();
    assertEquals("U-000012 NOT SAFE: Switching the source off failed: no answer.", lines.get(0));
    assertTrue(lines.get(1).contains("Press the stop button on the bench"), lines.get(1));
  }
}
