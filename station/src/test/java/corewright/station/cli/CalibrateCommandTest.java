package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A channel that is known to read 1 % and 20 mV too much, by construction. */
class CalibrateCommandTest extends Commands {
  @Test
  void itsErrorIsFoundKeptAndWrittenAndWhatItReadSinceIsSuspect() throws Exception {
    Path bench = folder.resolve("bench.json");
    Path shipped =
        Path.of(System.getProperty("corewright.home"), "fixtures/benches/emulated-sd48.json");
    Files.copy(shipped, bench);
    String off = levels("off.csv", 1.01, 0.02);
    String right = levels("right.csv", 1, 0.001);

    assertEquals(0, calibrate(bench, off, "--left", right, "--json"), err.toString());
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals(0.01, json.at("/found/slope").asDouble(), 1e-9);
    assertEquals(0.02, json.at("/found/zero").asDouble(), 1e-9);
    // Ten levels from 0 to 54 V, 2 mV each: u(slope) = u/√Σ(x − mean)², JCGM 100, H.3.3
    assertEquals(0.002 / Math.sqrt(2970), json.at("/found/uSlope").asDouble(), 1e-12);
    assertTrue(json.get("out").asText().contains("read 0.5600 V off at 54.000 V"), out.toString());

    BenchDescription now = Descriptions.bench(bench);
    assertEquals(Descriptions.bench(shipped).revision() + 1, now.revision());
    BenchDescription.ChannelCalibration output =
        now.channels().stream().filter(c -> c.channel().equals("output")).findFirst().orElseThrow();
    assertEquals("meter 4711, K-88, due 2027-11-29", output.calibration());
    assertTrue(output.offset() > 0.001 && output.offset() < 0.002, output.toString());
    assertEquals(Files.readString(shipped), Files.readString(Path.of(json.get("old").asText())));

    assertEquals(0, calibrate(bench, right, "--json"), err.toString());
    assertTrue(new ObjectMapper().readTree(out.toString()).get("out").isNull(), out.toString());
    assertFalse(out.toString().contains("found to read"), out.toString());
    assertEquals(0, calibrate(bench, off), err.toString());
    String words = "As found: reads 0.020 ± 0.003 V and 1.000 ± 0.007 % of the level too much";
    assertTrue(out.toString().startsWith(words), out.toString());
  }

  @Test
  void nineLevelsAndALineThatIsNoneAreRefused() throws Exception {
    Path bench = folder.resolve("bench.json");
    Files.copy(
        Path.of(System.getProperty("corewright.home"), "fixtures/benches/emulated-sd48.json"),
        bench);
    String text = Files.readString(Path.of(levels("ten.csv", 1, 0)));
    Path nine = folder.resolve("nine.csv");
    Files.writeString(nine, text.substring(0, text.lastIndexOf('\n', text.length() - 2) + 1));
    assertEquals(1, calibrate(bench, nine.toString()));
    assertTrue(err.toString().contains("holds 9 levels"), err.toString());
    Files.writeString(nine, text + "12,00;0;12,00\n");
    assertEquals(1, calibrate(bench, nine.toString()));
    assertTrue(err.toString().contains("nine.csv:12 is not a level"), err.toString());
    assertEquals(1, Descriptions.bench(bench).revision());
  }

  @Test
  void whatCannotBeReadAndADayThatIsNoneAreSaidInWordsAndNotAsAFaultOfTheProgram()
      throws Exception {
    Path bench = folder.resolve("bench.json");
    Files.copy(
        Path.of(System.getProperty("corewright.home"), "fixtures/benches/emulated-sd48.json"),
        bench);
    assertEquals(1, calibrate(bench, "none.csv"));
    assertTrue(err.toString().contains("from none.csv: no such file"), err.toString());
    String ten = levels("ten.csv", 1, 0);
    assertEquals(2, calibrate(bench, ten, "--due=soon"));
    assertTrue(err.toString().contains("'soon' is no day; write year"), err.toString());
    assertFalse(err.toString().contains("java."), err.toString());
    assertEquals(1, calibrate(bench, ten, "--due=2020-02-02"));
    assertTrue(err.toString().contains("Due again on 2020-02-02"), err.toString());
    assertEquals(1, calibrate(bench, ten, "--meter= "));
    assertTrue(err.toString().contains("Give --meter, with its number"), err.toString());
    assertEquals(1, calibrate(bench, ten, "--channel=boost"));
    assertTrue(err.toString().contains("It has input, output, load, inp"), err.toString());
    assertEquals(1, Descriptions.bench(bench).revision());
  }

  private int calibrate(Path bench, String found, String... more) {
    List<String> words =
        new ArrayList<>(
            List.of(
                "calibrate",
                "--bench=" + bench,
                "--channel=output",
                "--found=" + found,
                "--meter=meter 4711, K-88",
                "--due=2027-11-29",
                "--shop=" + folder.resolve("shop")));
    for (String word : more) { // given anew instead of what stands there
      words.removeIf(w -> w.contains("=") && w.startsWith(word.replaceAll("=.*", "=")));
      words.add(word);
    }
    return run(words.toArray(String[]::new));
  }

  /** As a spreadsheet with decimal commas writes them. */
  private String levels(String name, double gain, double zero_V) throws Exception {
    StringBuilder text = new StringBuilder("meter;u;bench\n");
    for (int i = 0; i < 10; i++) {
      double x = 6.0 * i;
      text.append(String.format(Locale.GERMANY, "%.9f;0,002;%.9f%n", x, gain * x + zero_V));
    }
    return Files.writeString(folder.resolve(name), text).toString();
  }
}
