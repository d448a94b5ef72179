package corewright.station.work;

/** What was asked for cannot be done: what, where, and what to do instead. Nothing was lost. */
public final class Refused extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final String remedy;

  /**
   * States what is refused.
   *
   * @param what what cannot be done and where, one sentence without a full stop
   * @param remedy what to do, one sentence; shown as it is
   */
  public Refused(String what, String remedy) {
    super(what);
    this.remedy = remedy;
  }

  public String remedy() {
    return remedy;
  }
}
