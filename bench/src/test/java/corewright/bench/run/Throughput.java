package corewright.bench.run;

import com.sun.management.OperatingSystemMXBean;
import corewright.bench.capture.RawScan;
import corewright.bench.port.Link;
import corewright.bench.port.serial.BareSerial;
import corewright.bench.port.serial.SerialLinks;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How much of what the serial library reads is left when frames are decoded, checked, recorded and
 * measured; whether 5 MS/s in each of three channels come through; how soon a trip is commanded.
 * The board is a process of its own behind a pseudo-terminal.
 */
final class Throughput {
  private static final int RATE_HZ = 5_000_000;
  private static final int TURNS = 15;
  private static final double TURN_S = 1;

  /** Turns in which the compiler is at work. */
  private static final int WARM = 4;

  private static final byte[] START =
      FastBoard.frame(
          0x82,
          0,
          ByteBuffer.allocate(8)
              .order(ByteOrder.LITTLE_ENDIAN)
              .putInt(RATE_HZ)
              .putShort((short) Framing.of(RATE_HZ, 3).samples())
              .array());

  private static final int TRIPS = 300;

  /** How long the board keeps samples that the line does not take. */
  private static final double MEMORY_S = 0.1;

  private final Path folder;
  private final List<String> figures = new ArrayList<>();
  private List<String> trailing = List.of();
  private int turn;

  private Throughput(Path folder) {
    this.folder = folder;
  }

  /** Arguments: a folder for captures, seconds of the stream of 5 MS/s. */
  public static void main(String[] args) throws IOException, InterruptedException {
    Throughput all = new Throughput(Path.of(args[0]));
    all.ratio();
    all.stream(Double.parseDouble(args[1]));
    all.trips();
    System.out.println("throughput: " + String.join(" ", all.figures));
  }

  /** By turns of a second, so that whatever else the computer does meets both. */
  private void ratio() throws IOException, InterruptedException {
    List<Double> bares = new ArrayList<>();
    List<Double> ratios = new ArrayList<>();
    List<Double> works = new ArrayList<>();
    try (Board board = new Board(false, -1)) {
      for (int i = 0; i < WARM + TURNS; i++) {
        long begun = worked();
        double bare = BareSerial.read(board.path, START, TURN_S);
        double bare_ns = (worked() - begun) / (bare * TURN_S);
        begun = worked();
        Streamed ours = ours(board);
        double ours_ns = (double) (worked() - begun) / ours.bytes();
        if (i >= WARM) {
          bares.add(bare);
          ratios.add(ours.bytesPerSecond() / bare);
          works.add(bare_ns / ours_ns);
        }
      }
    }
    bares.sort(null);
    ratios.sort(null);
    works.sort(null);
    System.out.printf(
        Locale.ROOT,
        "of this thread's processor time %.2f is the serial library's%n",
        works.get(TURNS / 2));
    System.out.printf(
        Locale.ROOT,
        "bare %.1f MB/s; ratio %.2f to %.2f in the middle half of %d turns%n",
        bares.get(TURNS / 2) / 1e6,
        ratios.get(TURNS / 4),
        ratios.get(TURNS * 3 / 4),
        TURNS);
    figure("ratio=%.2f", ratios.get(TURNS / 2));
  }

  private record Streamed(double bytes, double seconds) {
    double bytesPerSecond() {
      return bytes / seconds;
    }
  }

  /** What is decoded, checked, recorded and then measured. */
  private Streamed ours(Board board) throws IOException {
    try (FastStation station = board.station(own())) {
      long begun = System.nanoTime();
      Sampler sampler = station.start();
      while (System.nanoTime() - begun < TURN_S * 1e9) {
        sampler.next();
      }
      station.stop();
      RawScan.Result measured = station.measured();
      double seconds = (System.nanoTime() - begun) * 1e-9;
      double bytes = measured.samples() * (6 + 30.0 / station.samplesOfFrame());
      return new Streamed(bytes, seconds);
    }
  }

  private void stream(double seconds) throws IOException, InterruptedException {
    try (Board board = new Board(true, -1)) {
      RawScan.Result measured;
      double took_s;
      double cpu;
      long most = 0;
      try (FastStation station = board.station(own())) {
        long busy = busy();
        long begun = System.nanoTime();
        Sampler sampler = station.start();
        while (sampler.at_s() < seconds) {
          sampler.next();
          most = Math.max(most, used());
        }
        took_s = (System.nanoTime() - begun) * 1e-9;
        cpu = (busy() - busy) * 1e-9 / took_s;
        station.stop();
        measured = station.measured();
        most = Math.max(most, used());
      }
      board.end();
      long missing = measured.missing() / Framing.of(RATE_HZ, 3).samples();
      System.out.printf(
          Locale.ROOT,
          "%d samples of each channel, %d frames missing, of them %s lost by the board%n",
          measured.samples(),
          missing,
          board.said.get(0));
      figure("rate_MSps=%.2f", (measured.samples() - measured.missing()) / took_s / 1e6);
      figure("lost=%.0f", missing);
      trailing = List.of(text("cpu=%.2f", cpu), text("heap_MB=%.0f", most / 1e6));
    }
  }

  private void trips() throws IOException, InterruptedException {
    try (Board board = new Board(true, 40)) {
      ArrivalLink link = new ArrivalLink(board.link());
      try (FastStation station = new FastStation(link, RATE_HZ, own())) {
        for (int i = 0; i < TRIPS; i++) {
          station.untilItTrips();
        }
        station.stop();
      }
      board.end();
      List<Long> there = board.said.stream().skip(1).map(Long::valueOf).toList();
      System.out.println("seen from the board, over the line and back: " + spread(there));
      System.out.println("from the arrival of the frame: " + spread(link.reactions_ns()));
      figure("trip_p99_us=%.0f", p99_us(link.reactions_ns()));
      trailing =
          List.of(text("board_p99_us=%.0f", p99_us(there)), trailing.get(0), trailing.get(1));
    }
    figures.addAll(trailing);
  }

  private static String spread(List<Long> ns) {
    List<Long> sorted = ns.stream().sorted().toList();
    return text("median %.0f us, ", sorted.get(TRIPS / 2) * 1e-3)
        + text("p99 %.0f us, ", p99_us(ns))
        + text("worst %.0f us", sorted.get(TRIPS - 1) * 1e-3);
  }

  private static double p99_us(List<Long> ns) {
    if (ns.size() != TRIPS) {
      throw new IllegalStateException(ns.size() + " of " + TRIPS + " trips were commanded");
    }
    return ns.stream().sorted().toList().get(TRIPS * 99 / 100 - 1) * 1e-3;
  }

  private Path own() throws IOException {
    if (turn > 0) {
      Files.delete(folder.resolve("turn" + turn + "/fast.raw"));
    }
    return Files.createDirectory(folder.resolve("turn" + ++turn));
  }

  private void figure(String format, double value) {
    figures.add(text(format, value));
  }

  private static String text(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }

  private static long used() {
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }

  /** Processor time of this thread, ns. */
  private static long worked() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static long busy() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  /** A board's process. */
  private static final class Board implements AutoCloseable {
    final List<String> said = new ArrayList<>();
    final String path;
    private final Process process;
    private final BufferedReader out;

    Board(boolean paced, int tripAt) throws IOException {
      String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
      process =
          new ProcessBuilder(
                  java,
                  "-Xmx64m",
                  "-XX:+UseSerialGC",
                  "-cp",
                  System.getProperty("java.class.path"),
                  FastBoard.class.getName(),
                  Boolean.toString(paced),
                  Double.toString(MEMORY_S),
                  "400",
                  Integer.toString(tripAt))
              .redirectError(ProcessBuilder.Redirect.appendTo(new File("/dev/stderr")))
              .start();
      out = process.inputReader();
      path = out.readLine();
    }

    FastStation station(Path own) {
      return new FastStation(link(), RATE_HZ, own);
    }

    Link link() {
      return new SerialLinks(Clock.system()).open("digitizer", path, 115_200);
    }

    /** Lets it end, and hears what it has to say. */
    void end() throws IOException {
      process.getOutputStream().close();
      out.lines().forEach(said::add);
    }

    @Override
    public void close() throws IOException {
      end();
    }
  }
}
