package corewright.bench.life;

/** How a claim is classed, and what that usually means. Common practice, no source. */
public enum ClaimClass {
  W1("workmanship or part, the same group failed again", Outcome.ACCEPTED),
  W2("new fault, seal intact, no cause from outside", Outcome.ACCEPTED),
  W3("caused where it was installed", Outcome.DECLINED),
  W4("no fault found, ambient, cold, hot and tapped", Outcome.NO_FAULT_FOUND),
  W5("opened or tampered with", Outcome.DECLINED),
  W6("not our unit", Outcome.DECLINED),
  W7("out of term", Outcome.DECLINED);

  private final String words;
  private final Outcome usual;

  ClaimClass(String words, Outcome usual) {
    this.words = words;
    this.usual = usual;
  }

  public String words() {
    return words;
  }

  /** What follows where nobody says otherwise; goodwill is somebody's word. */
  public Outcome usual() {
    return usual;
  }

  /** How a claim ends. */
  public enum Outcome {
    ACCEPTED,
    DECLINED,
    GOODWILL,
    NO_FAULT_FOUND
  }
}
