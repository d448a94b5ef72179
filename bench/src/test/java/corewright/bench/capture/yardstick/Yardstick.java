package corewright.bench.capture.yardstick;

import corewright.bench.capture.CodeSurvey;
import corewright.measures.code.CodeCounts;
import corewright.measures.code.CodeStatistics;
import corewright.measures.code.Codes;
import corewright.measures.code.EdgeAnswer;
import corewright.measures.code.HoldCodes;
import corewright.measures.code.Jumps;
import corewright.measures.spectrum.Spectrum;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The program's side of {@code .ci/soak/yardstick}: the work of {@code yardstick.py} on the same
 * record in memory. Prints a median time for each stage and writes what came out, to be compared.
 *
 * <p>Arguments: the folder with {@code output.i2} and {@code load.i2}.
 */
final class Yardstick {
  private static final int HOLDS = 200;
  private static final double RATE_HZ = 1e6;
  private static final double LSB_V = 80 / 32768.0;
  private static final double LSB_A = 5 / 32768.0;
  private static final Jumps JUMPS = new Jumps((int) (0.2 / LSB_A));
  private static final int APART = 100;
  private static final double BAND = 0.48 / LSB_V;
  private static final int WARM_UP = 6;
  private static final int RUNS = 9;

  private final Codes output;
  private final Codes load;
  private final int settle;

  private final CodeCounts counts = new CodeCounts();
  private final CodeStatistics[] windows = new CodeStatistics[HOLDS];
  private final EdgeAnswer[] answers = new EdgeAnswer[HOLDS - 1];
  private int[] steps = {};
  private List<HoldCodes> holds = List.of();
  private Optional<Spectrum> spectrum = Optional.empty();

  private Yardstick(Path folder) throws IOException {
    output = codes(folder.resolve("output.i2"));
    load = codes(folder.resolve("load.i2"));
    settle = output.size() / HOLDS / 5;
  }

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Yardstick yardstick = new Yardstick(folder);
    time("cold", 0, 1, () -> yardstick.all(1));
    time("statistics", WARM_UP, RUNS, yardstick::statistics);
    time("transients", WARM_UP, RUNS, yardstick::transients);
    time("welch", WARM_UP / 2, RUNS, () -> yardstick.welch(1));
    time("all1", WARM_UP / 2, RUNS, () -> yardstick.all(1));
    time("all2", WARM_UP / 2, RUNS, () -> yardstick.all(2));
    yardstick.write(folder);
  }

  private void all(int threads) {
    CodeSurvey survey = new CodeSurvey(threads);
    steps = survey.steps(load, JUMPS, APART);
    holds = survey.holds(output, steps, settle, BAND);
    welch(threads);
  }

  /** Mean, rms, extremes and exact median of every window, whose bounds are known. */
  private void statistics() {
    int length = output.size() / HOLDS;
    for (int i = 0; i < HOLDS; i++) {
      counts.add(output, i * length + settle, (i + 1) * length);
      windows[i] = counts.take();
    }
  }

  /** Steps of the load, and what the output answers; the windows' statistics are there. */
  private void transients() {
    steps = new CodeSurvey(1).steps(load, JUMPS, APART);
    for (int i = 0; i < steps.length; i++) {
      int end = i + 1 < steps.length ? steps[i + 1] : output.size();
      int settled = steps[i] + settle;
      answers[i] = EdgeAnswer.of(output, steps[i], settled, end, windows[i + 1], BAND);
    }
  }

  private void welch(int threads) {
    spectrum = Optional.of(new CodeSurvey(threads).spectrum(output, RATE_HZ, LSB_V));
  }

  private static void time(String stage, int warmUp, int runs, Runnable work) {
    boolean several = stage.equals("all2");
    double[] times_s = new double[runs];
    for (int i = -warmUp; i < runs; i++) {
      Stopwatch watch = several ? Stopwatch.ofSeveral() : Stopwatch.ofThisThread();
      work.run();
      times_s[Math.max(0, i)] = watch.seconds();
    }
    Arrays.sort(times_s);
    System.out.printf(Locale.ROOT, "%s %.6f%n", stage, times_s[runs / 2]);
  }

  /**
   * One line a hold (mean, rms, lowest, highest, median, undershoot V, recovery s), and the bins.
   */
  private void write(Path folder) throws IOException {
    try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(folder.resolve("holds.txt")))) {
      for (HoldCodes hold : holds) {
        CodeStatistics w = hold.window().orElseThrow();
        double undershoot = hold.answer().map(a -> w.mean() - a.lowest()).orElse(0.0);
        double recovery = hold.answer().map(a -> a.recovery() / RATE_HZ).orElse(0.0);
        out.printf(
            Locale.ROOT,
            "%d %.12g %.12g %.12g %.12g %.12g %.12g %.9f%n",
            hold.start(),
            LSB_V * w.mean(),
            LSB_V * w.rms(),
            LSB_V * w.lowest(),
            LSB_V * w.highest(),
            LSB_V * w.median(),
            LSB_V * undershoot,
            recovery);
      }
    }
    try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(folder.resolve("bins.txt")))) {
      Spectrum found = spectrum.orElseThrow();
      for (int bin = 0; bin < found.size(); bin++) {
        out.printf(Locale.ROOT, "%.12g%n", found.density(bin) * found.density(bin));
      }
    }
  }

  private static Codes codes(Path path) throws IOException {
    try (FileChannel file = FileChannel.open(path)) {
      int[] pairs = new int[(int) (file.size() / Integer.BYTES)];
      file.map(FileChannel.MapMode.READ_ONLY, 0, file.size())
          .order(ByteOrder.LITTLE_ENDIAN)
          .asIntBuffer()
          .get(pairs);
      return Codes.ofPairs(pairs, 2 * pairs.length);
    }
  }
}
