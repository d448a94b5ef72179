package corewright.bench.record;

/** Where the numbers of a record come from. Only {@link #BENCH} can certify. */
public enum Source {
  BENCH("bench"),
  EMULATED("emulated"),
  IMPORTED("imported file"),
  BY_HAND("entered by hand");

  private final String words;

  Source(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
