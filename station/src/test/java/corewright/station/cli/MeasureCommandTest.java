package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

/** What {@code measure} promises to people and to other programs. */
class MeasureCommandTest extends Commands {
  @Test
  void jsonHasEveryReadingWithValueUncertaintyAndUnit() throws IOException {
    assertEquals(
        0,
        run(
            "measure",
            recorded("healthy_sw"),
            "--settle=0.005",
            "--guard=0.0001",
            "--nominal=48",
            "--json"));
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals(1e6, json.get("sampleRate_Hz").asDouble());
    assertEquals(63_000, json.get("samples").asInt());
    assertEquals("scatter and resolution only", json.get("uBasis").asText());
    assertEquals(7, json.get("holds").size());
    JsonNode hold = json.get("holds").get(4);
    assertEquals(4, hold.get("index").asInt());
    assertEquals(0.036, hold.get("start_s").asDouble(), 1e-7);
    assertEquals(0.045, hold.get("end_s").asDouble(), 1e-7);
    for (String key :
        List.of(
            "load:A",
            "output:V",
            "droop:V",
            "loadRegulation:%",
            "ripplePeakToPeak:V",
            "rippleRms:V",
            "rippleFundamental:Hz",
            "rippleFundamentalAmplitude:V",
            "undershoot:V",
            "overshoot:V",
            "recovery:s",
            "input:V",
            "inputMinimum:V")) {
      JsonNode reading = hold.get(key.substring(0, key.indexOf(':')));
      assertTrue(reading.get("value").isNumber(), key);
      assertTrue(reading.get("u").asDouble() > 0, key);
      assertEquals(key.substring(key.indexOf(':') + 1), reading.get("unit").asText(), key);
    }
    // numpy on the same samples: fixtures/captures/healthy_sw/truth.json, capture_reference
    assertEquals(47.9309164, hold.at("/output/value").asDouble(), 1e-6);
    assertTrue(hold.get("drift").isNull());
    assertEquals("the hold is shorter than 1 s", hold.at("/notMeasured/drift").asText());
    assertEquals("never_left", hold.get("recoveryState").asText());
    assertEquals("Ω", json.at("/outputResistance/unit").asText());
  }

  /**
   * The rows are what the simulator's own figures say: the ripple's line at 101,368.47 Hz with the
   * amplitude of truth.json; and the densities add up to the rms (Parseval).
   */
  @Test
  void theSpectrumIsWrittenWithItsWindowsAndUnits() throws IOException {
    Path csv = folder.resolve("spectrum.csv");
    String[] words = {
      "measure", recorded("high_esr_sw"), "--settle=0.005", "--guard=0.0001", "--spectrum=" + csv
    };
    assertEquals(0, run(words), err.toString());
    List<String> lines = Files.readAllLines(csv);
    JsonNode truth =
        new ObjectMapper()
            .readTree(Path.of(recorded("high_esr_sw")).resolveSibling("truth.json").toFile())
            .at("/capture_reference/steps/4");
    assertTrue(
        lines.get(0).matches("# hold 1: .* segments of \\d+ samples.* Hz apart"), lines.get(0));
    assertTrue(lines.get(1).matches("# amplitude: .*HFT90D; resolution [0-9.]+ Hz"), lines.get(1));
    assertTrue(lines.get(2).matches("# density: .*HANN; resolution [0-9.]+ Hz; ± .*k = 2.*"));
    int head = lines.indexOf("hold,frequency,amplitude,density");
    assertEquals(",Hz,V,V/√Hz", lines.get(head + 1));
    double highest = 0;
    double at_Hz = 0;
    double squares = 0;
    double width_Hz = 0;
    for (String row : lines.subList(head + 2, lines.size())) {
      double[] cells = Arrays.stream(row.split(",")).mapToDouble(Double::parseDouble).toArray();
      if (cells[0] == 5) {
        width_Hz = width_Hz == 0 ? cells[1] : width_Hz;
        squares += cells[3] * cells[3];
        if (cells[1] > 5e3 && cells[2] > highest) {
          highest = cells[2];
          at_Hz = cells[1];
        }
      }
    }
    assertEquals(truth.at("/fundamental/freq_Hz").asDouble(), at_Hz, width_Hz);
    double amplitude_V = truth.at("/fundamental/amplitude_V_peak").asDouble();
    assertEquals(1, highest / amplitude_V, 0.002); // 0.004 dB, and the ripple settles a little
    double rms_V = truth.get("ripple_rms_detrended_V").asDouble();
    assertEquals(1, Math.sqrt(squares * width_Hz) / rms_V, 0.01);
    assertEquals(1, run(words), "a file that is there is kept");
  }

  /** u² = scatter² + (gain · value)² + offset² (JCGM 100, 5.1.2); of a droop the offset cancels. */
  @Test
  void aCalibrationIsInUAndIsNamed() throws IOException {
    Path calibration =
        Files.writeString(
            folder.resolve("recorder.json"),
            """
            { "channels": [
              { "channel": "output", "gain_rel": 0.001, "offset": 0.02, "calibration": "C 17" },
              { "channel": "elsewhere", "gain_rel": 0.1, "offset": 1, "calibration": "C 18" }
            ] }
            """);
    assertEquals(0, run("measure", recorded("ilim_low_avg"), "--json"));
    JsonNode bare = new ObjectMapper().readTree(out.toString()).at("/holds/4");
    assertEquals(
        0, run("measure", recorded("ilim_low_avg"), "--calibration=" + calibration, "--json"));
    JsonNode json = new ObjectMapper().readTree(out.toString());
    JsonNode hold = json.at("/holds/4");
    assertEquals("scatter, resolution, gain and offset of output", json.get("uBasis").asText());
    assertEquals(bare.at("/output/value"), hold.at("/output/value"));
    assertEquals(
        Math.hypot(
            bare.at("/output/u").asDouble(),
            Math.hypot(0.001 * bare.at("/output/value").asDouble(), 0.02)),
        hold.at("/output/u").asDouble(),
        1e-9);
    assertEquals(
        Math.hypot(bare.at("/droop/u").asDouble(), 0.001 * bare.at("/droop/value").asDouble()),
        hold.at("/droop/u").asDouble(),
        1e-9);
    assertEquals(bare.at("/load/u"), hold.at("/load/u"));
  }

  @Test
  void aCalibrationOfOtherChannelsIsRefused() throws IOException {
    Path calibration =
        Files.writeString(
            folder.resolve("recorder.json"),
            "{ \"channels\": [ { \"channel\": \"Vout\", \"gain_rel\": 0.001, \"offset\": 0,"
                + " \"calibration\": \"C 17\" } ] }");
    int code = run("measure", recorded("dead_avg"), "--calibration=" + calibration);
    assertEquals(ExitCodes.REFUSED, code);
    assertTrue(err.toString().contains("this record has output, load, input"), err.toString());
  }

  @Test
  void withoutAFamilyThereIsNoVerdictAndTheReasonIsGiven() throws IOException {
    assertEquals(0, run("measure", recorded("healthy_sw"), "--json"));
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertTrue(json.get("verdict").isNull());
    assertTrue(json.get("inputQualifier").isNull());
    assertTrue(json.at("/reasons/0").asText().contains("--family"), out.toString());
    assertTrue(
        json.at("/holds/1/recovery/flags/0").asText().contains("nominal"),
        "a band of an unknown nominal is flagged");
  }

  /** JCGM 106, 7.2: Φ of the distance to the limit over u. */
  @Test
  void everyFindingSaysHowProbablyTheUnitConforms() throws IOException {
    assertEquals(0, run("measure", recorded("ilim_low_avg"), "--family=ref48"));
    String text = out.toString();
    assertTrue(text.contains("conforms with probability under 0.01"), text);
    assertEquals(0, run("measure", recorded("ilim_low_avg"), "--family=ref48", "--json"));
    JsonNode findings = new ObjectMapper().readTree(out.toString()).get("findings");
    assertEquals(
        text.lines().filter(line -> line.contains("conforms with")).count(), read(findings));
    int compared = 0;
    for (JsonNode finding : findings) {
      if (finding.get("quantity").asText().equals("undershoot")) {
        compared++;
        double away = finding.get("pass").asDouble() - finding.get("value").asDouble();
        double expected = Erf.erfc(-away / finding.get("u").asDouble() / Math.sqrt(2)) / 2;
        assertEquals(expected, finding.get("conformity").asDouble(), 1e-9, finding.toString());
      }
    }
    assertTrue(compared >= 3, findings.toString());
  }

  private static long read(JsonNode findings) {
    long read = 0;
    for (JsonNode finding : findings) {
      read += finding.has("conformity") ? 1 : 0;
    }
    return read;
  }

  @Test
  void aFamilyJudgesTheRecord() throws IOException {
    assertEquals(0, run("measure", recorded("ilim_low_avg"), "--family=ref48", "--json"));
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals("FAIL", json.get("verdict").asText());
    assertEquals("valid", json.get("inputQualifier").asText());
    assertTrue(json.at("/reasons/0").asText().contains("43.2"), out.toString());
  }

  @Test
  void theTableNamesUnitsAndU() {
    assertEquals(0, run("measure", recorded("dead_avg"), "--family=ref48"));
    assertTrue(out.toString().contains("Hold 1, 0 s to 28 s (judged from "), out.toString());
    assertTrue(
        out.toString().matches("(?s).*  Input +12[.]000[0-9]* ± 0[.]0[0-9]* V\\R.*"),
        out.toString());
    assertTrue(out.toString().contains("Verdict: FAIL"));
    assertEquals("", err.toString());
  }

  /** A count has no unit; what five holds lack for one reason is told once, in words. */
  @Test
  void theTableIsAsLongAsWhatItSays() {
    assertEquals(0, run("measure", recorded("healthy_avg")));
    String table = out.toString();
    assertTrue(table.contains("Hold 2, 4 s to 8 s (judged from 4.5 s to 7.98 s)"), table);
    assertTrue(table.matches("(?s).*  Load pulses +0\\R.*"), table);
    assertTrue(table.contains("Case, hottest: no thermometer on the case"), table);
    assertEquals(1, table.split("the input current was not recorded", -1).length - 1, table);
    assertTrue(table.lines().allMatch(line -> line.length() < 160), table);
    assertEquals(0, run("measure", recorded("healthy_sw"), "--settle=0.15"));
    assertTrue(out.toString().contains("0.009 s to 0.018 s (too short to be judged)"), table);
  }

  @Test
  void guessesGoToStderrAndNeverToStdout() throws IOException {
    Path file = folder.resolve("other.csv");
    Files.writeString(
        file,
        "t [ms];Vin [mV];Vout [V];I load [mA]\n"
            + "0;12000;48;0\n1;12000;48;0\n2;12000;48;0\n3;12000;48;0\n");
    assertEquals(0, run("measure", file.toString(), "--json"));
    assertTrue(err.toString().contains("'Vin [mV]', is read as input in mV."), err.toString());
    assertEquals(1000, new ObjectMapper().readTree(out.toString()).get("sampleRate_Hz").asInt());
  }

  @Test
  void aWrongLineIsNamedWithAColumnAndARemedy() throws IOException {
    Path file = folder.resolve("bad.csv");
    Files.writeString(file, "time_s,input_V,output_V,load_A\n0,12,48,0\n1,12,x,0\n");
    assertEquals(ExitCodes.REFUSED, run("measure", file.toString(), "--json"));
    assertEquals("", out.toString());
    assertTrue(err.toString().contains("bad.csv:3: column 3 (output_V)"), err.toString());
  }

  @Test
  void aBudgetNamesEverySourceOfEveryLevel() {
    String bench =
        Path.of(System.getProperty("corewright.home"), "fixtures", "benches", "emulated-sd48.json")
            .toString();
    assertEquals(
        0, run("measure", recorded("healthy_avg"), "--nominal=48", "--bench=" + bench, "--budget"));
    String text = out.toString();
    assertTrue(text.contains("gain and offset of"), text.substring(0, 200));
    for (String words :
        List.of(
            "Budget of Droop, hold 5",
            "mean of samples, loaded",
            "resolution, no load",
            "rectangular",
            "sensitivity",
            "k = ",
            "(95 %)")) {
      assertTrue(text.contains(words), words);
    }
    assertEquals(2, run("measure", recorded("healthy_avg"), "--budget", "--json"));
  }

  @Test
  void whatElseIsKnownOfTheRecordGivesFurtherReadings() throws IOException {
    assertEquals(
        0,
        run(
            "measure",
            recorded("healthy_sw"),
            "--settle=0.005",
            "--guard=0.0001",
            "--nominal=48",
            "--discharge=2200",
            "--band=0.3",
            "--bandwidth=50000",
            "--json"));
    JsonNode holds = new ObjectMapper().readTree(out.toString()).get("holds");
    assertEquals(472.2e-6, holds.get(6).at("/capacitanceFromDecay/value").asDouble(), 10e-6, "C");
    assertEquals(0.030, holds.get(1).at("/esr/value").asDouble(), 0.006, "ESR");
    assertTrue(holds.get(4).at("/rippleRmsInBand/value").asDouble() > 0);
    assertTrue(holds.get(1).at("/recoveryStatedBand/value").asDouble() > 0);
    assertTrue(holds.get(4).at("/notMeasured/esr").asText().contains("light load"));
  }

  @Test
  void columnsUnitsAndRateAreTakenAsSaid() throws IOException {
    StringBuilder text = new StringBuilder("A,B,C,D\n");
    for (int i = 0; i < 4000; i++) {
      text.append(i % 7).append(",12.01,").append(48000 + i % 2).append(",500\n");
    }
    Path record = folder.resolve("export.csv");
    Files.writeString(record, text);
    assertEquals(
        0,
        run(
            "measure",
            record.toString(),
            "--column=output=3",
            "--column=input=B",
            "--column=load=4",
            "--unit=output=mV",
            "--unit=load=mA",
            "--rate=2000",
            "--json"));
    JsonNode json = new ObjectMapper().readTree(out.toString());
    assertEquals(2000, json.get("sampleRate_Hz").asDouble());
    JsonNode hold = json.get("holds").get(0);
    assertEquals(48.0005, hold.at("/output/value").asDouble(), 1e-9);
    assertEquals(12.01, hold.at("/input/value").asDouble(), 1e-9);
    assertEquals(0.5, hold.at("/load/value").asDouble(), 1e-9);
    for (String guess :
        List.of("Column 3 is taken for the output", "Column 1, 'A', is not used", "2000.0 Hz")) {
      assertTrue(err.toString().contains(guess), guess + " in " + err);
    }
  }

  @Test
  void columnsAndUnitsThatThereAreNotAreRefused() throws IOException {
    Path record = folder.resolve("two.csv");
    Files.writeString(record, "time_s,input_V,output_V\n0,12,48\n0.1,12,48\n0.2,12,48\n");
    for (String wrong : List.of("--column=outptu=3", "--unit=output=mA", "--rate=-1")) {
      assertEquals(2, run("measure", record.toString(), wrong), wrong);
    }
    assertTrue(run("measure", record.toString(), "--column=output=9") != 0);
    assertTrue(err.toString().contains("no column '9'"), err.toString());
    assertTrue(run("measure", record.toString(), "--unit=load=mA") != 0);
    assertTrue(err.toString().contains("--column as well"), err.toString());
  }

  @Test
  void aLongFileShowsHowFarItIs() {
    StringWriter shown = new StringWriter();
    ProgressLine line = new ProgressLine(new PrintWriter(shown), 100);
    line.at(50, 99);
    assertEquals("", shown.toString());
    line.at(50, 200);
    line.at(50, 200);
    line.at(200, 200);
    assertEquals(2, shown.toString().split("\r", -1).length - 1);
    assertTrue(shown.toString().contains("25 %") && shown.toString().contains("100 %"));
  }

  @Test
  void valuesThatMakeNoSenseAreRefusedByTheCommandLine() {
    assertEquals(ExitCodes.USAGE, run("measure", recorded("dead_avg"), "--settle=-1"));
    assertEquals(ExitCodes.USAGE, run("measure", recorded("dead_avg"), "--nominal=0"));
    assertEquals(ExitCodes.USAGE, run("measure"));
    assertNotEquals(0, run("measure", folder.resolve("none.csv").toString()));
    assertFalse(err.toString().contains("Exception"), err.toString());
  }
}
