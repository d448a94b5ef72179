package corewright.bench.capture;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * The whole records of a raw capture, one after the other, through one buffer: a file of any size
 * takes as much memory as its longest record. Not thread-safe.
 */
final class RawRecords {
  private static final int ROOM = 1 << 18;
  private static final int HEAD_BYTES = 5;

  private final FileChannel file;
  private final CRC32C check = new CRC32C();
  private ByteBuffer buffer = room(ROOM);

  /**
   * @throws IllegalArgumentException if the file does not begin as a raw capture
   */
  RawRecords(FileChannel file) throws IOException {
    this.file = file;
    buffer.limit(0);
    if (!have(RawFormat.MARK.length)
        || !buffer.slice(0, RawFormat.MARK.length).equals(ByteBuffer.wrap(RawFormat.MARK))) {
      throw new IllegalArgumentException("it does not begin as a raw capture");
    }
    buffer.position(RawFormat.MARK.length);
  }

  private static ByteBuffer room(int bytes) {
    return ByteBuffer.allocateDirect(bytes);
  }

  /**
   * The next whole record without its check: kind, length, content. Empty at the end, torn or not.
   * Only good until the next one is asked for.
   */
  Optional<ByteBuffer> next() throws IOException {
    if (!have(HEAD_BYTES)) {
      return Optional.empty();
    }
    int start = buffer.position();
    int length = buffer.order(ByteOrder.LITTLE_ENDIAN).getInt(start + 1);
    if (length < 0 || length > RawFormat.MOST_BYTES || !have(length + RawFormat.AROUND_BYTES)) {
      return Optional.empty();
    }
    start = buffer.position();
    int content = length + HEAD_BYTES;
    ByteBuffer record = buffer.slice(start, content).order(ByteOrder.LITTLE_ENDIAN);
    check.reset();
    check.update(record.duplicate());
    if ((int) check.getValue() != buffer.getInt(start + content)) {
      return Optional.empty();
    }
    buffer.position(start + length + RawFormat.AROUND_BYTES);
    return Optional.of(record);
  }

  /** Makes sure that so many bytes follow; false if the file ends before. */
  private boolean have(int bytes) throws IOException {
    if (buffer.remaining() >= bytes) {
      return true;
    }
    ByteBuffer rest = buffer;
    if (buffer.capacity() < bytes) {
      buffer = room(2 * bytes).order(ByteOrder.LITTLE_ENDIAN);
      buffer.put(rest);
    } else {
      buffer.compact();
    }
    while (buffer.position() < bytes && file.read(buffer) >= 0) {
      // until they are there
    }
    buffer.flip();
    return buffer.remaining() >= bytes;
  }
}
