package corewright.bench.capture;

import corewright.bench.record.RunEnd;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
      RawRecords records = new RawRecords(file);
      for (Optional<ByteBuffer> next = records.next(); next.isPresent(); next = records.next()) {
        reader.take(next.get());
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

  private static String text(ByteBuffer record) {
    return StandardCharsets.UTF_8.decode(record).toString();
  }
}
