package corewright.bench.capture;

import corewright.bench.port.Digitizer.Frame;
import corewright.bench.port.Digitizer.Status;
import corewright.bench.record.RunEnd;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.zip.CRC32C;

/**
 * Appends a capture to its raw file as it arrives. Each frame is handed to the operating system
 * before the next one is asked for, so a killed program loses none; the disk itself is waited for
 * at the beginning of each segment and at the end, so a power failure loses at most the segment
 * that was running. Not thread-safe.
 */
public final class RawWriter implements AutoCloseable {
  private final FileChannel file;
  private ByteBuffer buffer = ByteBuffer.allocate(65_536).order(ByteOrder.LITTLE_ENDIAN);

  private RawWriter(FileChannel file) {
    this.file = file;
  }

  /**
   * Begins a new file.
   *
   * @throws UncheckedIOException if it exists already or cannot be written
   */
  public static RawWriter create(Path path, CaptureHeader header) {
    try {
      FileChannel file =
          FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      RawWriter writer = new RawWriter(file);
      writer.putAll(ByteBuffer.wrap(RawFormat.MARK));
      writer.text(RawFormat.HEADER, HeaderText.write(header));
      file.force(true);
      return writer;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /**
   * The frames that follow belong to one step.
   *
   * @param kind of the step, as {@code HOLD}
   * @param rate_Hz samples a second and channel, from here on
   */
  public void segment(String id, String kind, double rate_Hz) {
    text(RawFormat.SEGMENT, id + "\t" + kind + "\t" + rate_Hz);
    force();
  }

  /** One frame. */
  public void frame(Frame frame) {
    int channels = frame.codes().length;
    int samples = frame.samples();
    begin(RawFormat.FRAME, RawFormat.FRAME_HEAD_BYTES + 2 * channels * samples);
    buffer
        .putLong(frame.first())
        .putShort((short) channels)
        .putInt(samples)
        .putShort(bits(frame.status()))
        .putInt(frame.brokenBefore());
    for (short[] codes : frame.codes()) {
      buffer.asShortBuffer().put(codes);
      buffer.position(buffer.position() + 2 * codes.length);
    }
    finish();
  }

  /** How the run ended; nothing follows. */
  public void end(RunEnd end) {
    text(
        RawFormat.END,
        String.join(
            "\t",
            end.kind().name(),
            end.trip().name(),
            end.step(),
            Double.toString(end.at_s()),
            HeaderText.word(end.saw()),
            HeaderText.word(end.remedy())));
    force();
  }

  @Override
  public void close() {
    try {
      file.close();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private void text(byte kind, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    begin(kind, bytes.length);
    buffer.put(bytes);
    finish();
  }

  private void begin(byte kind, int length) {
    if (buffer.capacity() < length + RawFormat.AROUND_BYTES) {
      buffer =
          ByteBuffer.allocate(2 * (length + RawFormat.AROUND_BYTES)).order(ByteOrder.LITTLE_ENDIAN);
    }
    buffer.clear().put(kind).putInt(length);
  }

  private void finish() {
    CRC32C check = new CRC32C();
    check.update(buffer.duplicate().flip());
    buffer.putInt((int) check.getValue()).flip();
    putAll(buffer);
  }

  private void putAll(ByteBuffer bytes) {
    try {
      while (bytes.hasRemaining()) {
        file.write(bytes);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private void force() {
    try {
      file.force(false);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static short bits(Status s) {
    return (short)
        ((s.interlockWhole() ? 1 : 0)
            | (s.relayClosed() ? 2 : 0)
            | (s.discharging() ? 4 : 0)
            | (s.overRange() ? 8 : 0)
            | (s.lostBefore() ? 16 : 0)
            | (s.watchdogTripped() ? 32 : 0));
  }
}
