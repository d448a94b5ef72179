package corewright.bench.capture.csv;

import corewright.bench.capture.ReadProgress;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Tells how far a file has been read each time something was read from it in bulk. */
final class WatchedInput extends FilterInputStream {
  private final long size;
  private final ReadProgress progress;
  private long read;

  WatchedInput(InputStream in, long size, ReadProgress progress) {
    super(in);
    this.size = size;
    this.progress = progress;
  }

  @Override
  public int read(byte[] into, int at, int length) throws IOException {
    int count = super.read(into, at, length);
    if (count > 0) {
      read += count;
      progress.at(read, size);
    }
    return count;
  }
}
