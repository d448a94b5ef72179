package corewright.profiles;

/**
 * Condition of a core on arrival, the best first, with the credit it usually brings. Common
 * practice, no source.
 */
public enum Grade {
  A("complete, clean, seals intact, connector good", 100, 100),
  B("complete, dirty, corroded outside, screws or seal missing", 80, 100),
  C("connector repairable, cover dented, opened before, parts missing", 40, 60),
  D("water inside, burnt board, broken connector, potting dug out", 10, 20),
  X("wrong part, empty case, fire, mixed serials, counterfeit", 0, 0);

  private final String words;
  private final int least_percent;
  private final int most_percent;

  Grade(String words, int least_percent, int most_percent) {
    this.words = words;
    this.least_percent = least_percent;
    this.most_percent = most_percent;
  }

  public String words() {
    return words;
  }

  public int least_percent() {
    return least_percent;
  }

  public int most_percent() {
    return most_percent;
  }

  public boolean worseThan(Grade other) {
    return compareTo(other) > 0;
  }
}
