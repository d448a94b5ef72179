package corewright.benchmarks;

import corewright.bench.capture.csv.TextRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** A record of text with a million rows, read as the command line reads it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class TextBenchmark {
  private static final int ROWS = 1_000_000;
  private Path file;

  @Setup(Level.Trial)
  public void write() throws IOException {
    Record record = new Record();
    StringBuilder text = new StringBuilder("time_s,input_V,output_V,load_A\n");
    for (int i = 0; i < ROWS; i++) {
      double output_V = Record.LSB_V * record.raw[i];
      text.append(String.format(Locale.ROOT, "%.6f,12.0012,%.4f,0.5003%n", i * 1e-6, output_V));
    }
    file = Files.createTempFile("record", ".csv");
    Files.writeString(file, text);
  }

  @TearDown(Level.Trial)
  public void delete() throws IOException {
    Files.delete(file);
  }

  @Benchmark
  public TextRecord.Read read() {
    return TextRecord.read(file);
  }
}
