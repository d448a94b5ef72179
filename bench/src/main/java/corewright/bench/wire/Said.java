package corewright.bench.wire;

/**
 * One thing that a dialect can say, said to an instrument, and what came of it.
 *
 * @param pointer where the dialect says so, as {@code /actions/set/0} (RFC 6901)
 * @param sent what was sent
 * @param came what came back, or what was found; a sentence where it was not right
 * @param good whether it is what the dialect says
 * @param remedy what to do, one sentence; empty where nothing is
 */
public record Said(String pointer, String sent, String came, boolean good, String remedy) {

  static Said good(String pointer, String sent, String came) {
    return new Said(pointer, sent, came, true, "");
  }

  static Said wrong(String pointer, String sent, String came, String remedy) {
    return new Said(pointer, sent, came, false, remedy);
  }
}
