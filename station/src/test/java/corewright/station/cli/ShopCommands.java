package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;

/** Commands in one shop. */
abstract class ShopCommands extends Commands {
  /** What a command that goes well says. */
  JsonNode json(String... arguments) throws Exception {
    List<String> all = new ArrayList<>(List.of(arguments));
    all.add("--json");
    assertEquals(0, run(all.toArray(String[]::new)), () -> all + ": " + err);
    return new ObjectMapper().readTree(out.toString());
  }

  /** A command that is refused, and why. */
  void refused(String why, String... arguments) {
    assertEquals(1, run(arguments), () -> List.of(arguments) + ": " + out);
    assertTrue(err.toString().replaceAll("\\s+", " ").matches(".*(" + why + ").*"), err.toString());
  }

  /** In the one shop of this test. */
  @Override
  int run(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    if (!words[0].equals("verify")) {
      all.add("--shop=" + folder.resolve("shop"));
    }
    return super.run(all.toArray(String[]::new));
  }

  /** The verdict on a unit by the recorded waveform of one that fails. */
  String measured(String tag) throws Exception {
    return json("measure", recorded("ilim_low_avg"), "--tag", tag).at("/run/verdict").asText();
  }
}
