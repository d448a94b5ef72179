package corewright.bench.triage;

/** What was agreed with whom. */
public record Terms(Mode mode, Claim claim, Data data, Cause cause, Approval approval) {

  /** The plain case of a mode: no claim, nothing stored, no outside cause, approved. */
  public static Terms plain(Mode mode) {
    return new Terms(mode, Claim.NONE, Data.NONE, Cause.NONE, Approval.APPROVED);
  }

  /**
   * The shop's own once accepted: nobody has to approve what is done with it. What comes back under
   * warranty was sold, and is the customer's.
   */
  boolean ours() {
    return claim == Claim.NONE && (mode == Mode.EXCHANGE || mode == Mode.STOCK);
  }

  public Terms with(Approval other) {
    return new Terms(mode, claim, data, cause, other);
  }

  /** The commercial mode; it says which outcomes are permitted. */
  public enum Mode {
    /** The customer's own unit comes back. */
    REPAIR,
    /** A paid diagnosis, no rebuild. */
    TEST_ONLY,
    /** A rebuilt unit went out, this core came in. */
    EXCHANGE,
    /** Bought to be rebuilt. */
    STOCK;

    /**
     * The mode as {@code Core.mode} writes it: {@code repair}, {@code test only}, {@code exchange},
     * {@code stock}.
     *
     * @throws IllegalArgumentException naming those, if it is none of them
     */
    public static Mode of(String word) {
      for (Mode mode : values()) {
        if (mode.name().replace('_', ' ').equalsIgnoreCase(word.strip())) {
          return mode;
        }
      }
      throw new IllegalArgumentException(
          "'" + word + "' is no mode. Use repair, test only, exchange or stock.");
    }
  }

  /** Whether it comes back under warranty. */
  public enum Claim {
    NONE,
    FIRST,
    /** A claim before this one found nothing. */
    REPEATED
  }

  /** Whether the unit stores data that pair it with its vehicle. */
  public enum Data {
    NONE,
    PAIRED
  }

  /** Damage that came from outside, as a shorted harness or reverse battery. */
  public enum Cause {
    NONE,
    UNCORRECTED
  }

  /** What the customer said to the quote; for the shop's own cores it is not looked at. */
  public enum Approval {
    /** In writing, or within what was approved with the order. */
    APPROVED,
    NOT_ASKED,
    DECLINED,
    /** No answer within the time that the quote gave. */
    SILENT
  }
}
