package corewright.bench.capture;

import corewright.measures.CodeStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteOrder;
import java.nio.IntBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileChannel.MapMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Codes of a channel that is too long for the heap, in a temporary file that is mapped into memory:
 * the system keeps of it what it has room for. The file is gone when the program ends, however it
 * ends, where the system allows a name to be removed from an open file.
 */
final class SpilledCodes implements CodeStore {
  private static final int MOST = Integer.MAX_VALUE / Integer.BYTES; // one mapping

  private final FileChannel file;
  private IntBuffer codes = IntBuffer.allocate(0);
  private int size;

  SpilledCodes() {
    try {
      Path path = Files.createTempFile("corewright-column", ".tmp");
      path.toFile().deleteOnExit();
      file =
          FileChannel.open(
              path,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              StandardOpenOption.DELETE_ON_CLOSE);
    } catch (IOException refused) {
      throw new UncheckedIOException("no temporary file can be made for a long column", refused);
    }
  }

  /** Adds the first {@code count} of {@code block}. */
  void add(int[] block, int count) {
    if (size + (long) count > codes.capacity()) {
      map(Math.max(2L * size, (long) size + count));
    }
    codes.put(size, block, 0, count);
    size += count;
  }

  private void map(long capacity) {
    if (capacity > MOST && size == MOST) {
      throw new UncheckedIOException(
          new IOException("a column of more than " + MOST + " values is not read"));
    }
    try {
      codes =
          file.map(MapMode.READ_WRITE, 0, Integer.BYTES * Math.min(MOST, capacity))
              .order(ByteOrder.nativeOrder())
              .asIntBuffer();
    } catch (IOException full) {
      throw new UncheckedIOException("the folder of temporary files has no room left", full);
    }
  }

  void set(int i, int code) {
    codes.put(i, code);
  }

  @Override
  public int size() {
    return size;
  }

  @Override
  public int at(int i) {
    return codes.get(i);
  }
}
