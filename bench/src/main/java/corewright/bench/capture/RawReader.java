package corewright.bench.capture;

import corewright.bench.record.RunEnd;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/** Reads a raw capture, frame by frame, up to its last whole record; a torn end is no mistake. */
final class RawReader {
  private final CaptureParts parts;

  private RawReader(CaptureParts parts) {
    this.parts = parts;
  }

  /**
   * @param progress told after each frame
   * @throws IllegalArgumentException if it is no raw capture, or says what cannot be
   */
  static void read(Path path, CaptureParts parts, ReadProgress progress) throws IOException {
    RawReader reader = new RawReader(parts);
    try (FileChannel file = FileChannel.open(path)) {
      RawRecords records = new RawRecords(file);
      long read = RawFormat.MARK.length;
      for (Optional<ByteBuffer> next = records.next(); next.isPresent(); next = records.next()) {
        reader.take(next.get());
        read += next.get().limit() + RawFormat.CHECK_BYTES;
        progress.at(read, file.size());
      }
      progress.at(file.size(), file.size());
    }
  }

  private void take(ByteBuffer record) {
    byte kind = record.get();
    record.getInt();
    switch (kind) {
      case RawFormat.HEADER -> parts.header(HeaderText.read(text(record)));
      case RawFormat.SEGMENT -> segment(text(record).split("\t", -1));
      case RawFormat.FRAME -> frame(record);
      case RawFormat.END -> parts.end(end(text(record).split("\t", -1)));
      default -> throw new IllegalArgumentException("a record of kind " + kind + " is not known");
    }
  }

  private void segment(String[] words) {
    parts.segment(words[0], words[1], Double.parseDouble(words[2]));
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
    parts.samples(first, codes);
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
