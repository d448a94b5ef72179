package corewright.bench.capture;

/** Told how far a long file has been read, a few times in each megabyte. */
@FunctionalInterface
public interface ReadProgress {
  /** For whoever does not want to know. */
  ReadProgress UNSEEN = (read, all) -> {};

  /**
   * @param read bytes of the file, packed as it is, so far
   * @param all bytes of the file
   */
  void at(long read, long all);
}
