package corewright.measures.meter;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.measures.Capture;
import corewright.measures.MeterSettings;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.GZIPInputStream;

/** A capture of {@code fixtures/captures} with the truth that was computed apart from it. */
final class RecordedCapture {
  static final List<String> NAMES =
      List.of(
          "healthy_sw",
          "high_esr_sw",
          "cap_loss_sw",
          "healthy_avg",
          "healthy_avg_noisy12",
          "ilim_low_avg",
          "input_sag_avg",
          "hiccup_avg",
          "crank_good_avg",
          "dead_avg");

  private static final Map<String, RecordedCapture> READ = new ConcurrentHashMap<>();

  final Capture capture;
  final JsonNode truth;

  private RecordedCapture(Capture capture, JsonNode truth) {
    this.capture = capture;
    this.truth = truth;
  }

  static RecordedCapture of(String name) {
    return READ.computeIfAbsent(name, RecordedCapture::read);
  }

  private static RecordedCapture read(String name) {
    Path folder = Path.of(System.getProperty("corewright.home"), "fixtures", "captures", name);
    try {
      JsonNode truth = new ObjectMapper().readTree(folder.resolve("truth.json").toFile());
      return new RecordedCapture(
          csv(folder.resolve("capture.csv.gz"), truth.get("sample_rate_Hz").asDouble()), truth);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** {@code time_s,input_V,output_V,load_A} with four decimals, which become codes of 100 µ. */
  private static Capture csv(Path file, double sampleRate_Hz) throws IOException {
    int[][] codes = new int[3][1 << 19];
    int n = 0;
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                new GZIPInputStream(Files.newInputStream(file)), StandardCharsets.US_ASCII))) {
      lines.readLine();
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        String[] fields = line.split(",");
        for (int c = 0; c < 3; c++) {
          codes[c][n] = (int) Math.round(1e4 * Double.parseDouble(fields[c + 1]));
        }
        n++;
      }
    }
    return new Capture(
        sampleRate_Hz,
        wave(codes[1], n, Unit.VOLT),
        Optional.of(wave(codes[2], n, Unit.AMPERE)),
        List.of(new Capture.Feed("input", wave(codes[0], n, Unit.VOLT))),
        Optional.empty(),
        List.of());
  }

  private static Waveform wave(int[] codes, int n, Unit unit) {
    return Waveform.ofCodes(Arrays.copyOf(codes, n), 1e-4, 0, unit);
  }

  /** The settle, guard and nominal that the truth was computed with. */
  MeterSettings settings() {
    return new MeterSettings(
        Optional.of(truth.get("settle_s").asDouble()),
        Optional.of(truth.get("guard_s").asDouble()),
        Optional.of(truth.get("nominal_V").asDouble()),
        Map.of());
  }
}
