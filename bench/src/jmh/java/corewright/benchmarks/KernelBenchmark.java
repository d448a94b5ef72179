package corewright.benchmarks;

import corewright.measures.code.CodeCounts;
import corewright.measures.code.CodeStatistics;
import corewright.measures.code.Codes;
import corewright.measures.code.EdgeAnswer;
import corewright.measures.code.HoldCodes;
import corewright.measures.code.HoldScan;
import corewright.measures.code.Jumps;
import corewright.measures.code.Welch;
import corewright.measures.spectrum.Spectrum;
import corewright.measures.spectrum.Window;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The kernels on codes over a record of 4 million samples, beside the plain way of each. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class KernelBenchmark {
  private final CodeCounts counts = new CodeCounts();

  @Benchmark
  public CodeStatistics statistics(Record record) {
    CodeStatistics last = null;
    for (int hold = 0; hold < Record.HOLDS; hold++) {
      counts.add(record.output, hold * Record.HOLD + Record.SETTLE, (hold + 1) * Record.HOLD);
      last = counts.take();
    }
    return last;
  }

  /** Sum, squares and extremes in one loop; the median by sorting. */
  @Benchmark
  public double plainStatistics(Record record) {
    double all = 0;
    for (int hold = 0; hold < Record.HOLDS; hold++) {
      int from = hold * Record.HOLD + Record.SETTLE;
      int to = (hold + 1) * Record.HOLD;
      long sum = 0;
      long squares = 0;
      int lowest = Integer.MAX_VALUE;
      int highest = Integer.MIN_VALUE;
      for (int i = from; i < to; i++) {
        int code = record.raw[i];
        sum += code;
        squares += (long) code * code;
        lowest = Math.min(lowest, code);
        highest = Math.max(highest, code);
      }
      short[] sorted = Arrays.copyOfRange(record.raw, from, to);
      Arrays.sort(sorted);
      all += sum + squares + lowest + highest + sorted[sorted.length / 2];
    }
    return all;
  }

  @Benchmark
  public int[] jumps(Record record) {
    return new Jumps(Record.THRESHOLD).in(record.load, 0, record.load.size());
  }

  @Benchmark
  public int plainJumps(Record record) {
    int count = 0;
    for (int i = 1; i < record.load.size(); i++) {
      count += Math.abs(record.load.at(i) - record.load.at(i - 1)) > Record.THRESHOLD ? 1 : 0;
    }
    return count;
  }

  @Benchmark
  public int edgeAnswers(Record record) {
    // Statistics of a window that stays within the band, as they come out of the counts.
    CodeStatistics window = new CodeStatistics(1, 19_640, 0, 19_560, 19_710, 19_640, 19_640);
    int recovery = 0;
    for (int hold = 1; hold < Record.HOLDS; hold++) {
      int edge = hold * Record.HOLD;
      int end = edge + Record.HOLD;
      recovery +=
          EdgeAnswer.of(record.output, edge, edge + Record.SETTLE, end, window, Record.BAND)
              .recovery();
    }
    return recovery;
  }

  @Benchmark
  public Spectrum welch(Record record) {
    Welch welch = new Welch();
    for (int at = 0; at + Welch.HALF <= record.output.size(); at += Welch.HALF) {
      welch.add(record.output, at);
    }
    return Welch.spectrum(1e6, Record.LSB_V, welch);
  }

  @Benchmark
  public Spectrum plainWelch(Record record) {
    double[] volts = new double[record.raw.length];
    for (int i = 0; i < volts.length; i++) {
      volts[i] = Record.LSB_V * record.raw[i];
    }
    return Spectrum.of(volts, 1e6, Window.HANN, 2 * Welch.HALF);
  }

  /** Steps, statistics and answers in one pass over blocks. */
  @Benchmark
  public List<HoldCodes> holdScan(Record record) {
    HoldScan scan = new HoldScan(new Jumps(Record.THRESHOLD), 100, Record.SETTLE, Record.BAND);
    scan.add(record.load, record.output);
    return scan.finish();
  }

  @Benchmark
  public Codes pack(Record record) {
    return Codes.of(record.raw);
  }
}
