package corewright.reports.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.record.Finding;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.measures.Capture;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.reports.SampleRuns;
import corewright.reports.Samples;
import corewright.reports.Waves;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

class ChartsTest {
  private static final Numerals POINT = Numerals.of(Locale.UK);
  @TempDir Path folder;
  private final SampleRuns runs = new SampleRuns();

  @ParameterizedTest
  @ValueSource(strings = {"good", "weak", "marginal", "hiccup", "sagging"})
  void everyKindOfRunIsDrawn(String kind) throws Exception {
    Capture capture = (Capture) Waves.class.getMethod(kind).invoke(null);
    RunRecord run = runs.run(kind, "U-00418Q", capture, Profile.Purpose.ARRIVAL, Source.EMULATED);
    Path file = new Charts(runs, Locale.UK).svg(run, out()).orElseThrow();
    String svg = Files.readString(file);
    assertTrue(svg.length() < 250_000, "SVG of " + svg.length() + " characters");
    Document parsed =
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    assertEquals(
        "U-00418Q: " + run.judgement().reasons().get(0),
        parsed.getElementsByTagName("title").item(0).getTextContent());
    assertEquals(svg, Files.readString(new Charts(runs, Locale.UK).svg(run, folder).orElseThrow()));
  }

  @Test
  void aRunWithoutCurvesHasNoPicture() {
    RunRecord run =
        runs.run(
            "dead",
            "U-00418Q",
            Optional.empty(),
            Profile.Purpose.ARRIVAL,
            Source.BENCH,
            new RunEnd(RunEnd.Kind.REFUSED_TO_POWER, "first-power", 0, "A short.", "Stop."));
    assertEquals(Optional.empty(), new Charts(runs, Locale.UK).svg(run, folder));
  }

  @Test
  void theHeadlineIsWhereTheLimitWasMetWorst() {
    RunRecord run =
        runs.run("weak", "U-00418Q", Waves.weak(), Profile.Purpose.ARRIVAL, Source.BENCH);
    Finding worst = Headlines.worst(run).orElseThrow();
    assertEquals("output-full", worst.limit().id());
    assertEquals(3, worst.hold());
    assertEquals(Verdict.FAIL, run.judgement().verdict().orElseThrow());
  }

  @Test
  void aLimitIsNeverRoundedToTheReading() {
    Limit limit = Samples.OUTPUT_FULL;
    assertEquals(
        "46.50 V",
        Digits.of(limit, POINT).limit(limit, Optional.of(new Measurement(47.62, 0.03, Unit.VOLT))));
    assertEquals(
        "46.5 V",
        Digits.of(limit, POINT).limit(limit, Optional.of(new Measurement(19, 2, Unit.VOLT))));
    assertEquals("46.5 V", Digits.of(limit, POINT).limit(limit, Optional.empty()));
  }

  @Test
  void smallSecondsAreMilliseconds() {
    Limit limit =
        new Limit(
            "r", Quantity.RECOVERY, Limit.Side.AT_MOST, 0.005, 0.005, 0, 2, false, "a sample");
    Measurement m = new Measurement(0.00231, 0.00002, Unit.SECOND);
    Digits digits = Digits.of(limit, POINT);
    assertEquals("2.31", digits.value(m));
    assertEquals("± 0.04 ms", digits.u(m).replace('\u00A0', ' '));
    assertEquals("5.00 ms", digits.limit(limit, Optional.of(m)));
    assertEquals("2.69", digits.margin(0.00269, m));
  }

  private Path out() {
    String kept = System.getProperty("corewright.pictures");
    return kept == null ? folder : Path.of(kept);
  }
}
