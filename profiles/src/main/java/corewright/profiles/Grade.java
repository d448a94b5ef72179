package corewright.profiles;

/**
 * The condition of a core, the best first. Shares of the deposit are the trade's judgement, a start
 * for a shop's own.
 */
public enum Grade {
  A("complete, clean, seals intact, connector good", "100 %"),
  B("complete, dirty, minor corrosion outside, missing screws or seal", "80 to 100 %"),
  C("connector repairable, cover dented, opened before, non-wear parts missing", "40 to 60 %"),
  D("water inside, burnt board, broken connector body, potting dug out", "10 to 20 %, harvest"),
  X("wrong part, empty case, fire, mixed serials, counterfeit", "0 %, goes back");

  private final String meaning;
  private final String credit;

  Grade(String meaning, String credit) {
    this.meaning = meaning;
    this.credit = credit;
  }

  /** What a core of this grade looks like. */
  public String meaning() {
    return meaning;
  }

  /** Which part of the deposit is given back. */
  public String credit() {
    return credit;
  }

  public boolean worseThan(Grade other) {
    return compareTo(other) > 0;
  }
}
