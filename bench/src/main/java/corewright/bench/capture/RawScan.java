package corewright.bench.capture;

import corewright.bench.port.Digitizer.Channel;
import corewright.measures.code.Codes;
import corewright.measures.code.HoldCodes;
import corewright.measures.code.HoldScan;
import corewright.measures.code.Jumps;
import corewright.measures.code.Welch;
import corewright.measures.spectrum.Spectrum;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Goes through a raw capture once, whatever its length, and says what its holds come to and what
 * the output's spectrum is. Memory does not grow with the file. Where samples are missing the last
 * value is held, as everywhere.
 */
public final class RawScan {
  private static final int BLOCK = Welch.HALF;
  private static final int MOST_MISSING = 1 << 30;

  private final Settings settings;
  private final int[] load = new int[BLOCK / 2];
  private final int[] output = new int[BLOCK / 2];
  private final Welch welch = new Welch();
  private Optional<CaptureHeader> header = Optional.empty();
  private Optional<HoldScan> scan = Optional.empty();
  private int loadChannel;
  private int outputChannel;
  private boolean inHold;
  private int filled;
  private long samples;
  private long missing;
  private long next;

  private RawScan(Settings settings) {
    this.settings = settings;
  }

  /**
   * What counts as what.
   *
   * @param step_A the load steps where it changes by more from one sample to the next
   * @param apart a step at most so many samples after another is part of it
   * @param settle_s not in the window of a hold
   * @param band_V half-width of the recovery band about the window's mean
   */
  public record Settings(double step_A, int apart, double settle_s, double band_V) {}

  /**
   * What was found.
   *
   * @param output channel that the codes of the holds belong to
   * @param samples of each channel while the profile's holds ran, the missing ones among them
   * @param spectrum of the output; empty where there are fewer than 65,536 samples
   */
  public record Result(
      Channel output,
      List<HoldCodes> holds,
      long samples,
      long missing,
      Optional<Spectrum> spectrum) {}

  /**
   * @throws IllegalArgumentException if it is no raw capture, or has no output or load
   */
  public static Result of(Path path, Settings settings) throws IOException {
    RawScan scan = new RawScan(settings);
    try (FileChannel file = FileChannel.open(path)) {
      RawRecords records = new RawRecords(file);
      for (Optional<ByteBuffer> next = records.next(); next.isPresent(); next = records.next()) {
        scan.take(next.get());
      }
    }
    return scan.result();
  }

  private void take(ByteBuffer record) {
    byte kind = record.get();
    record.getInt();
    if (kind == RawFormat.HEADER) {
      begin(HeaderText.read(text(record)));
    } else if (kind == RawFormat.SEGMENT) {
      inHold = text(record).split("\t", -1)[1].equals("HOLD");
    } else if (kind == RawFormat.FRAME && inHold) {
      frame(record);
    }
  }

  private void begin(CaptureHeader read) {
    header = Optional.of(read);
    loadChannel = channel(read, "load");
    outputChannel = channel(read, "output");
    double load_A = read.channels().get(loadChannel).lsb();
    double output_V = read.channels().get(outputChannel).lsb();
    int settle = 2 * (int) Math.max(1, Math.round(settings.settle_s() * read.rate_Hz() / 2));
    scan =
        Optional.of(
            new HoldScan(
                new Jumps((int) Math.max(1, settings.step_A() / load_A)),
                settings.apart(),
                settle,
                settings.band_V() / output_V));
  }

  private static int channel(CaptureHeader header, String name) {
    List<String> names = header.channels().stream().map(Channel::name).toList();
    if (!names.contains(name)) {
      throw new IllegalArgumentException("there is no channel '" + name + "' among " + names);
    }
    return names.indexOf(name);
  }

  private void frame(ByteBuffer record) {
    long first = record.getLong();
    record.getShort(); // as many channels as the header names
    int count = record.getInt();
    long away = samples == 0 ? 0 : first - next;
    if (away < 0 || away > MOST_MISSING) {
      throw new IllegalArgumentException("a frame from sample " + first + " follows on " + next);
    }
    hold(away);
    next = first + count;
    int codes = record.position() + RawFormat.FRAME_HEAD_BYTES - Long.BYTES - Short.BYTES - 4;
    for (int done = 0; done < count; ) {
      int part = Math.min(count - done, BLOCK - filled);
      copy(record, codes + 2 * (loadChannel * count + done), part, load);
      copy(record, codes + 2 * (outputChannel * count + done), part, output);
      advance(part);
      done += part;
    }
  }

  /** Copies codes behind those that the block has, two at a time where they fall so. */
  private void copy(ByteBuffer record, int at, int count, int[] block) {
    int i = 0;
    if ((filled & 1) == 0) {
      ByteBuffer codes = record.slice(at, 2 * count).order(ByteOrder.LITTLE_ENDIAN);
      codes.asIntBuffer().get(block, filled / 2, count / 2);
      i = count & -2;
    }
    for (; i < count; i++) {
      Codes.put(block, filled + i, record.getShort(at + 2 * i));
    }
  }

  private void hold(long count) {
    if (count == 0) {
      return;
    }
    missing += count;
    int lastLoad = last(load);
    int lastOutput = last(output);
    for (long i = 0; i < count; i++) {
      Codes.put(load, filled, lastLoad);
      Codes.put(output, filled, lastOutput);
      advance(1);
    }
  }

  /** The last code taken; a block that was handed on still holds it. */
  private int last(int[] block) {
    return Codes.ofPairs(block, BLOCK).at(filled == 0 ? BLOCK - 1 : filled - 1);
  }

  private void advance(int count) {
    filled += count;
    samples += count;
    if (filled == BLOCK) {
      hand();
      welch.add(Codes.ofPairs(output, BLOCK), 0);
    }
  }

  private void hand() {
    scan.orElseThrow().add(Codes.ofPairs(load, filled), Codes.ofPairs(output, filled));
    filled = 0;
  }

  private Result result() {
    CaptureHeader read =
        header.orElseThrow(() -> new IllegalArgumentException("it breaks off in its header"));
    hand();
    Channel channel = read.channels().get(outputChannel);
    return new Result(
        channel,
        scan.orElseThrow().finish(),
        samples,
        missing,
        welch.segments() == 0
            ? Optional.empty()
            : Optional.of(Welch.spectrum(read.rate_Hz(), channel.lsb(), welch)));
  }

  private static String text(ByteBuffer record) {
    return StandardCharsets.UTF_8.decode(record).toString();
  }
}
