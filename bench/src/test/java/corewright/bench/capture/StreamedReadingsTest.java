package corewright.bench.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.record.RunEnd;
import corewright.measures.Capture;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.MeterSettings;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.measures.Waveform;
import corewright.measures.meter.RunMeter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A record that comes in frames, cut wherever a seed says, reads as the whole does: every reading,
 * U, flag and note of it. One that breaks off anywhere reads so in the holds that are whole.
 */
class StreamedReadingsTest {
  private static final double RATE = 2000;
  private static final int HOLD = 2500;
  private static final double[] LOADS_A = {0, 1.5, 3, 1};
  private static final int COUNT = HOLD * LOADS_A.length;
  private static final List<Channel> CHANNELS =
      List.of(
          new Channel("input", "V", 0.001, 0),
          new Channel("output", "V", 0.004, -1),
          new Channel("load", "A", 0.001, 0));
  private static final MeterSettings SETTINGS =
      new MeterSettings(Optional.of(0.2), Optional.of(0.01), Optional.of(48.0), Map.of());

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void cutAnywhereItReadsAsTheWhole(long seed) throws IOException {
    short[][] codes = codes(seed);
    MeasuredRun whole = RunMeter.read(capture(codes), SETTINGS);
    Random random = new Random(seed);
    Path raw = folder.resolve("run" + CaptureFile.RAW);
    write(raw, codes, random);
    assertEquals(whole, read(raw), "in frames of any length");
    Path sealed = folder.resolve("run" + CaptureFile.SEALED);
    CaptureFile.seal(CaptureFile.read(raw), sealed);
    assertEquals(whole, read(sealed), "sealed");

    byte[] bytes = Files.readAllBytes(raw);
    int keep = (int) ((0.6 + 0.35 * random.nextDouble()) * bytes.length);
    MeasuredRun torn = read(Files.write(folder.resolve("torn"), Arrays.copyOf(bytes, keep)));
    assertTrue(torn.samples() < COUNT && torn.samples() > 2 * HOLD, "cut to " + torn.samples());
    for (int hold = 0; hold < 2; hold++) {
      same(whole.holds().get(hold), torn.holds().get(hold));
    }
  }

  /** To a hundredth of u: where an edge lies is told with the noise of the whole record. */
  private static void same(MeasuredHold one, MeasuredHold other) {
    for (Quantity quantity : Quantity.values()) {
      assertEquals(
          one.value(quantity).isPresent(), other.value(quantity).isPresent(), quantity.id());
      one.value(quantity)
          .ifPresent(
              m ->
                  assertEquals(
                      m.value(),
                      other.value(quantity).orElseThrow().value(),
                      1e-9 * Math.abs(m.value()) + m.u() / 100,
                      quantity.id()));
    }
  }

  private static MeasuredRun read(Path file) {
    return RunMeter.read(Recording.read(file).capture(), SETTINGS);
  }

  private static void write(Path raw, short[][] codes, Random random) {
    CaptureHeader header = new CaptureHeader(RATE, CHANNELS, List.of("input"), new TreeMap<>());
    try (RawWriter writer = RawWriter.create(raw, header)) {
      writer.segment("h0", "HOLD", RATE);
      for (int at = 0; at < COUNT; ) {
        int from = at;
        int to = Math.min(COUNT, at + 1 + random.nextInt(700));
        short[][] part =
            Arrays.stream(codes).map(c -> Arrays.copyOfRange(c, from, to)).toArray(short[][]::new);
        writer.frame(new Frame(from, Frames.GOOD, part, 0));
        if (random.nextInt(4) == 0) {
          writer.segment("h" + to, "HOLD", RATE);
        }
        at = to;
      }
      writer.end(RunEnd.completed(COUNT / RATE));
    }
  }

  private static Capture capture(short[][] codes) {
    return new Capture(
        RATE,
        waveform(codes, 1),
        Optional.of(waveform(codes, 2)),
        List.of(new Capture.Feed("input", waveform(codes, 0))),
        Optional.empty(),
        List.of());
  }

  private static Waveform waveform(short[][] codes, int c) {
    int[] wide = new int[COUNT];
    Arrays.setAll(wide, i -> codes[c][i]);
    Channel channel = CHANNELS.get(c);
    Unit unit = channel.unit().equals("A") ? Unit.AMPERE : Unit.VOLT;
    return Waveform.ofCodes(wide, channel.lsb(), channel.offset(), unit);
  }

  /** Steps with a dip, ripple and noise. */
  private static short[][] codes(long seed) {
    Random random = new Random(100 + seed);
    short[][] codes = new short[CHANNELS.size()][COUNT];
    for (int i = 0; i < COUNT; i++) {
      int k = i / HOLD;
      double step = k == 0 ? 0 : LOADS_A[k] - LOADS_A[k - 1];
      double output =
          48
              - 0.05 * LOADS_A[k]
              - 0.4 * step * Math.exp(-(i % HOLD) / 12.0)
              + 0.03 * Math.sin(0.61 * i);
      double[] values = {12 - 0.1 * LOADS_A[k], output, LOADS_A[k]};
      for (int c = 0; c < codes.length; c++) {
        Channel channel = CHANNELS.get(c);
        double noisy = values[c] + 3 * channel.lsb() * random.nextGaussian();
        codes[c][i] = (short) Math.round((noisy - channel.offset()) / channel.lsb());
      }
    }
    return codes;
  }
}
