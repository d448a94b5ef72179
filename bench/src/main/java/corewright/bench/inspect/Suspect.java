package corewright.bench.inspect;

/**
 * What can be at fault when an output is, by what the outputs share, with its share among the units
 * that are sent in. The trade's judgement, a start for a shop's own.
 */
public enum Suspect {
  MODULE("the module", 0.45),
  FEED("its feed", 0.20),
  GROUND("its ground", 0.08),
  ONE_OUTPUT("one output, its wiring or its load", 0.20),
  OTHER("something else", 0.07);

  private final String words;
  private final double prior;

  Suspect(String words, double prior) {
    this.words = words;
    this.prior = prior;
  }

  public String words() {
    return words;
  }

  double prior() {
    return prior;
  }
}
