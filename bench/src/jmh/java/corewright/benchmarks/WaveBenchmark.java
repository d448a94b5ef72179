package corewright.benchmarks;

import corewright.measures.Waveform;
import corewright.measures.wave.CleanLine;
import corewright.measures.wave.Corners;
import corewright.measures.wave.CorrelatedScatter;
import corewright.measures.wave.LinearTrend;
import corewright.measures.wave.LowestMedian;
import corewright.measures.wave.NoisyExtreme;
import corewright.measures.wave.OnePoleFilter;
import corewright.measures.wave.PeakScatter;
import corewright.measures.wave.PulseTrain;
import corewright.measures.wave.Resolution;
import corewright.measures.wave.Smoothing;
import corewright.measures.wave.StorageFit;
import corewright.measures.wave.StrongestLine;
import corewright.measures.wave.Tail;
import corewright.measures.wave.Transient;
import corewright.measures.wave.WindowStatistics;
import java.util.Optional;
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

/** The kernels on a stretch of a waveform, each over one window of 200,000 samples. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WaveBenchmark {
  private static final double RATE_HZ = 1e6;
  private static final int EDGE = Record.HOLD;
  private static final int FROM = EDGE + Record.SETTLE;
  private static final int TO = EDGE + Record.HOLD;

  @Benchmark
  public WindowStatistics windowStatistics(Record record) {
    return WindowStatistics.of(record.volts, FROM, TO);
  }

  @Benchmark
  public LinearTrend linearTrend(Record record) {
    return LinearTrend.of(record.volts, FROM, TO);
  }

  @Benchmark
  public CorrelatedScatter correlatedScatter(Record record) {
    Waveform wave = record.volts;
    return CorrelatedScatter.of(wave, FROM, TO, LinearTrend.of(wave, FROM, TO));
  }

  @Benchmark
  public CorrelatedScatter scatterOfSquares(Record record) {
    Waveform wave = record.volts;
    return CorrelatedScatter.ofSquares(wave, FROM, TO, LinearTrend.of(wave, FROM, TO), 0.0036);
  }

  @Benchmark
  public Optional<Resolution> resolution(Record record) {
    return Resolution.of(record.volts, FROM, TO);
  }

  @Benchmark
  public double lowestMedian(Record record) {
    return LowestMedian.of(record.volts, FROM, TO, 1000);
  }

  @Benchmark
  public Tail tail(Record record) {
    return Tail.of(record.volts, FROM, TO);
  }

  @Benchmark
  public PeakScatter peakScatter(Record record) {
    return PeakScatter.of(i -> record.volts.at(FROM + i), TO - FROM);
  }

  @Benchmark
  public int noisyExtreme(Record record) {
    return NoisyExtreme.sharing(i -> record.volts.at(FROM + i), TO - FROM, 0.02, 1, 1);
  }

  @Benchmark
  public double[] smoothing(Record record) {
    return Smoothing.of(record.volts, RATE_HZ, FROM, TO);
  }

  @Benchmark
  public double[] onePoleFilter(Record record) {
    return new OnePoleFilter(0.05).of(record.volts, EDGE, FROM, TO);
  }

  @Benchmark
  public double corners(Record record) {
    return Corners.dip(record.volts, EDGE, FROM, 47, FROM, TO);
  }

  @Benchmark
  public Transient transients(Record record) {
    Transient.Settled settled = new Transient.Settled(47.98, 1e-3, 0.02, 1, 0.48);
    return Transient.of(record.volts, RATE_HZ, EDGE / RATE_HZ, FROM, TO, settled);
  }

  @Benchmark
  public Optional<StrongestLine> strongestLine(Record record) {
    return line(record);
  }

  /** Noise alone: as many tops as there can be. */
  @Benchmark
  public Optional<StrongestLine> strongestLineOfNoise(Record record) {
    return StrongestLine.find(record.amps, RATE_HZ, FROM, TO, 1.2e3, 2e6);
  }

  @Benchmark
  public Optional<CleanLine> cleanLine(Record record) {
    return CleanLine.of(record.volts, RATE_HZ, FROM, TO, line(record).orElseThrow());
  }

  private static Optional<StrongestLine> line(Record record) {
    return StrongestLine.find(record.volts, RATE_HZ, FROM, TO, 1.2e3, 2e6);
  }

  @Benchmark
  public PulseTrain pulseTrain(Record record) {
    return PulseTrain.find(record.amps, FROM, TO);
  }

  /** About an edge, as the capacitors are asked. */
  @Benchmark
  public Optional<StorageFit> storageFit(Record record) {
    return StorageFit.of(record.volts, record.amps, RATE_HZ, EDGE - 500, EDGE, EDGE + 500, 10);
  }
}
