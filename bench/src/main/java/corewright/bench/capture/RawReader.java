package corewright.bench.capture;

import corewright.bench.record.RunEnd;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32C;

/** Reads a raw capture up to its last whole record; a torn end is no mistake. */
final class RawReader {
  private Optional<CaptureHeader> header = Optional.empty();
  private final List<Segment> segments = new ArrayList<>();
  private Optional<SegmentBuilder> running = Optional.empty();
  private Optional<RunEnd> end = Optional.empty();

  private RawReader() {}

  /**
   * @throws IllegalArgumentException if it is no raw capture, or says what cannot be
   */
  static StoredCapture read(Path path) throws IOException {
    RawReader reader = new RawReader();
    try (FileChannel file = FileChannel.open(path)) {
      ByteBuffer mark = ByteBuffer.allocate(RawFormat.MARK.length);
      if (!fill(file, mark) || !mark.equals(ByteBuffer.wrap(RawFormat.MARK))) {
        throw new IllegalArgumentException("it does not begin as a raw capture");
      }
      Optional<ByteBuffer> record = record(file);
      while (record.isPresent()) {
        reader.take(record.get());
        record = record(file);
      }
    }
    reader.closeSegment();
    CaptureHeader header =
        reader.header.orElseThrow(
            () -> new IllegalArgumentException("it breaks off in its header"));
    return new StoredCapture(header, reader.segments, reader.end);
  }

  private void take(ByteBuffer record) {
    byte kind = record.get();
    record.getInt();
    switch (kind) {
      case RawFormat.HEADER -> header = Optional.of(HeaderText.read(text(record)));
      case RawFormat.SEGMENT -> openSegment(text(record).split("\t", -1));
      case RawFormat.FRAME -> frame(record);
      case RawFormat.END -> end = Optional.of(end(text(record).split("\t", -1)));
      default -> throw new IllegalArgumentException("a record of kind " + kind + " is not known");
    }
  }

  private void openSegment(String[] words) {
    closeSegment();
    int channels = header.map(h -> h.channels().size()).orElse(0);
    running =
        Optional.of(new SegmentBuilder(words[0], words[1], Double.parseDouble(words[2]), channels));
  }

  private void closeSegment() {
    running.filter(s -> !s.isEmpty()).ifPresent(s -> segments.add(s.build()));
    running = Optional.empty();
  }

  private void frame(ByteBuffer record) {
    long first = record.getLong();
    short[][] codes = new short[record.getShort()][record.getInt()];
    record.getShort();
    record.getInt();
    for (short[] channel : codes) {
      record.asShortBuffer().get(channel);
      record.position(record.position() + 2 * channel.length);
    }
    running
        .orElseThrow(() -> new IllegalArgumentException("a frame belongs to no segment"))
        .add(first, codes);
  }

  private static RunEnd end(String[] words) {
    return new RunEnd(
        RunEnd.Kind.valueOf(words[0]),
        RunEnd.Trip.valueOf(words[1]),
        words[2],
        Double.parseDouble(words[3]),
        words[4],
        words[5]);
  }

  /** The next whole record without its check; empty at a torn end. */
  private static Optional<ByteBuffer> record(FileChannel file) throws IOException {
    ByteBuffer head = ByteBuffer.allocate(5).order(ByteOrder.LITTLE_ENDIAN);
    if (!fill(file, head)) {
      return Optional.empty();
    }
    int length = head.getInt(1);
    if (length < 0 || length > RawFormat.MOST_BYTES) {
      return Optional.empty();
    }
    ByteBuffer record =
        ByteBuffer.allocate(length + RawFormat.AROUND_BYTES).order(ByteOrder.LITTLE_ENDIAN);
    record.put(head);
    if (!fill(file, record)) {
      return Optional.empty();
    }
    int content = record.limit() - 4;
    CRC32C check = new CRC32C();
    check.update(record.duplicate().limit(content));
    return (int) check.getValue() == record.getInt(content)
        ? Optional.of(record.limit(content))
        : Optional.empty();
  }

  /** Fills the buffer and turns it round; false if the file ends before. */
  private static boolean fill(FileChannel file, ByteBuffer buffer) throws IOException {
    while (buffer.hasRemaining()) {
      if (file.read(buffer) < 0) {
        return false;
      }
    }
    buffer.flip();
    return true;
  }

  private static String text(ByteBuffer record) {
    return StandardCharsets.UTF_8.decode(record).toString();
  }
}
