package corewright.bench.wire;

/** Answers made fit for a sentence. */
final class Texts {
  private static final int LONGEST = 60;

  private Texts() {}

  /** Control and foreign characters as {@code ·}, and not too long. */
  static String printable(String answer) {
    String shown = answer.replaceAll("[^ -~]", "·");
    return shown.length() <= LONGEST ? shown : shown.substring(0, LONGEST) + "…";
  }
}
