package corewright.bench.capture.yardstick;

import corewright.bench.capture.CaptureFile;
import corewright.bench.capture.CaptureHeader;
import corewright.bench.capture.RawScan;
import corewright.bench.capture.RawWriter;
import corewright.bench.capture.csv.TextRecord;
import corewright.bench.port.Digitizer.Channel;
import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import corewright.measures.Capture;
import corewright.measures.Waveform;
import corewright.measures.code.HoldCodes;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

/**
 * Files too long for memory, for {@code .ci/soak/yardstick} and {@code .ci/soak/long}.
 *
 * <ul>
 *   <li>{@code write FOLDER FRAMES}: a raw capture, the record of the folder over and over
 *   <li>{@code seal FOLDER}: seals it
 *   <li>{@code scan FOLDER}: goes through it with {@link RawScan} and holds its holds to those of
 *       the record in memory
 *   <li>{@code csv FOLDER}: reads {@code record.csv} as the command line does
 * </ul>
 */
final class LongFiles {
  private static final int FRAME = 4096;
  private static final List<String> CHANNELS = List.of("input", "output", "load");
  private static final double[] FULL_SCALE = {20, 80, 5};

  private LongFiles() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[1]);
    switch (args[0]) {
      case "write" -> write(folder, Long.parseLong(args[2]));
      case "seal" -> seal(folder);
      case "scan" -> scan(folder);
      case "csv" -> csv(folder);
      default -> throw new IllegalArgumentException(args[0]);
    }
  }

  private static void write(Path folder, long frames) throws IOException {
    short[][] record = new short[CHANNELS.size()][];
    List<Channel> channels = new ArrayList<>();
    for (int c = 0; c < record.length; c++) {
      byte[] bytes = Files.readAllBytes(folder.resolve(CHANNELS.get(c) + ".i2"));
      record[c] = new short[bytes.length / 2];
      ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer().get(record[c]);
      boolean current = CHANNELS.get(c).equals("load");
      channels.add(new Channel(CHANNELS.get(c), current ? "A" : "V", FULL_SCALE[c] / 32768, 0));
    }
    Files.deleteIfExists(folder.resolve("long.raw"));
    CaptureHeader header = new CaptureHeader(1e6, channels, List.of("input"), new TreeMap<>());
    Status good = new Status(true, true, false, false, false, false);
    try (RawWriter writer = RawWriter.create(folder.resolve("long.raw"), header)) {
      writer.segment("all", "HOLD", 1e6);
      short[][] codes = new short[record.length][FRAME];
      for (long at = 0; at + FRAME <= frames; at += FRAME) {
        for (int c = 0; c < codes.length; c++) {
          int from = (int) (at % record[c].length);
          int first = Math.min(FRAME, record[c].length - from);
          System.arraycopy(record[c], from, codes[c], 0, first);
          System.arraycopy(record[c], 0, codes[c], first, FRAME - first);
        }
        writer.frame(new Frame(at, good, codes, 0));
      }
    }
  }

  private static void seal(Path folder) {
    CaptureFile.seal(CaptureFile.read(folder.resolve("long.raw")), folder.resolve("long.h5"));
  }

  private static void scan(Path folder) throws IOException {
    Stopwatch watch = Stopwatch.ofThisThread();
    double settle_s = Files.size(folder.resolve("output.i2")) / 2 / 200 / 5 / 1e6;
    RawScan.Result found =
        RawScan.of(folder.resolve("long.raw"), new RawScan.Settings(0.2, 100, settle_s, 0.48));
    double time_s = watch.seconds();
    System.out.printf(
        Locale.ROOT,
        "scan %.3f samples %d holds %d%n",
        time_s,
        found.samples(),
        found.holds().size());
    for (String line : Files.readAllLines(Path.of("/proc/self/status"))) {
      if (line.startsWith("VmHWM")) {
        System.out.println("rss_kB " + line.replaceAll("\\D", ""));
      }
    }
    List<String> expected = Files.readAllLines(folder.resolve("holds.txt"));
    int wrong = 0;
    for (int i = 0; i + 1 < found.holds().size(); i++) { // the last is cut off
      wrong += agrees(found.holds().get(i), expected.get(i % expected.size()), i) ? 0 : 1;
    }
    System.out.println("wrong " + wrong);
  }

  /** Mean and median; and recovery, but for the hold that follows on the end of the record. */
  private static boolean agrees(HoldCodes hold, String line, int index) {
    String[] words = line.split(" ");
    double lsb = FULL_SCALE[1] / 32768;
    boolean window =
        hold.window()
            .filter(w -> Math.abs(lsb * w.mean() - Double.parseDouble(words[1])) < 1e-9)
            .filter(w -> Math.abs(lsb * w.median() - Double.parseDouble(words[5])) < 1e-9)
            .isPresent();
    return window
        && (index % 200 == 0
            || Math.abs(hold.answer().orElseThrow().recovery() / 1e6 - Double.parseDouble(words[7]))
                < 1e-9);
  }

  private static void csv(Path folder) throws IOException {
    Path path = folder.resolve("record.csv");
    double[] times_s = new double[5];
    for (int i = -2; i < times_s.length; i++) {
      Stopwatch watch = Stopwatch.ofThisThread();
      Capture capture = TextRecord.read(path).capture();
      times_s[Math.max(0, i)] = watch.seconds();
      if (i == -2) {
        System.out.printf(
            Locale.ROOT,
            "rows %d sums %d %d %d%n",
            capture.size(),
            sum(capture.feeds().get(0).voltage()),
            sum(capture.output()),
            sum(capture.load().orElseThrow()));
      }
    }
    Arrays.sort(times_s);
    System.out.printf(Locale.ROOT, "csv %.3f MB %.3f%n", times_s[2], Files.size(path) / 1e6);
  }

  private static long sum(Waveform wave) {
    long sum = 0;
    for (int i = 0; i < wave.size(); i++) {
      sum += wave.codeAt(i);
    }
    return sum;
  }
}
