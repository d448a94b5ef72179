package corewright.bench.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.capture.csv.TextRecord;
import corewright.bench.record.CueAnswer;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Reading;
import corewright.measures.Unit;
import corewright.measures.meter.RunMeter;
import corewright.profiles.Catalogue;
import corewright.profiles.Family;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The converter's frequency answers the bench's cue of the key, where the run resolves it. */
class BenchCuesTest {
  private static final Family FAMILY = Catalogue.ofHome().family("sd48"); // 65 and 100 kHz, 2 A
  private static final Instant NOW = Instant.parse("2026-11-25T08:00:00Z");

  /** Loads in A and fundamentals in Hz, hold by hold, at a sample rate; the answer, or none. */
  @ParameterizedTest
  @CsvSource(
      nullValues = "none",
      value = {
        "250000, 0 1 2, 900 64900 65100, 65 kHz",
        "250000, 0 1 2, 900 99000 101000, 100 kHz",
        "250000, 1 2, - 65100, 65 kHz", // one hold shows no line
        "250000, 0 0.5, 65000 65000, none", // never loaded
        "250000, 1 2, 32500 32500, none", // a dead phase halves it: a fault is no build
        "250000, 1 2, 65000 100000, none", // two answers are none
        "200000, 1 2, 65000 65000, none", // 135 kHz would look the same
        "10000, 1 2, 1500 1500, none"
      })
  void theKeyIsToldWhatTheRunResolves(double rate_Hz, String loads, String lines, String answer) {
    List<CueAnswer> answers = BenchCues.of(FAMILY, run(rate_Hz, loads, lines), "bench B1", NOW);
    assertEquals(
        answer == null ? List.of() : List.of(answer),
        answers.stream().map(CueAnswer::answer).toList());
    answers.forEach(a -> assertEquals("switching", a.cue()));
  }

  /** Between the answers of the key lies none of them. */
  @Test
  void aFrequencyOfNoAnswerIsNone() {
    assertEquals(List.of(), BenchCues.of(FAMILY, run(250e3, 2, 72_100, 40), "bench B1", NOW));
    assertEquals(1, BenchCues.of(FAMILY, run(250e3, 2, 71_900, 40), "bench B1", NOW).size());
  }

  /** The recorded circuit switches at 101 368.47 Hz (fixtures/captures/README.md). */
  @Test
  void aRecordedCircuitIsReadToTheHertz() {
    CueAnswer answer = BenchCues.of(FAMILY, recorded("healthy_sw"), "import", NOW).get(0);
    assertEquals("100 kHz", answer.answer());
    assertEquals(101_368.47, Double.parseDouble(answer.read().split(" ")[0]), 20, answer.read());
    assertEquals(List.of(), BenchCues.of(FAMILY, recorded("healthy_avg"), "import", NOW));
  }

  private static MeasuredRun recorded(String name) {
    Path file =
        Path.of(System.getProperty("corewright.home"), "fixtures", "captures", name)
            .resolve("capture.csv.gz");
    return RunMeter.read(TextRecord.read(file).capture(), MeterSettings.defaults());
  }

  private static MeasuredRun run(double rate_Hz, String loads, String lines) {
    List<MeasuredHold> holds = new ArrayList<>();
    String[] load = loads.split(" ");
    String[] line = lines.split(" ");
    for (int i = 0; i < load.length; i++) {
      Reading f = line[i].equals("-") ? Reading.none("no line") : hertz(line[i], 10);
      holds.add(hold(i, Double.parseDouble(load[i]), f));
    }
    return new MeasuredRun(rate_Hz, 1, "made up", holds, Map.of(), List.of());
  }

  private static MeasuredRun run(double rate_Hz, double load_A, double line_Hz, double u_Hz) {
    Reading f = hertz(String.valueOf(line_Hz), u_Hz);
    return new MeasuredRun(rate_Hz, 1, "made up", List.of(hold(0, load_A, f)), Map.of(), List.of());
  }

  private static Reading hertz(String text, double u_Hz) {
    return Reading.of(Double.parseDouble(text), u_Hz, Unit.HERTZ);
  }

  private static MeasuredHold hold(int index, double load_A, Reading fundamental) {
    Map<Quantity, Reading> readings =
        Map.of(
            Quantity.LOAD,
            Reading.of(load_A, 0.001, Unit.AMPERE),
            Quantity.RIPPLE_FUNDAMENTAL,
            fundamental);
    return new MeasuredHold(index, index, index + 1, index, index + 1, readings, List.of(), "");
  }
}
