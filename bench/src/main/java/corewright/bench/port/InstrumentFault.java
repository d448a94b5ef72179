package corewright.bench.port;

/** The bench is broken, not the unit on it: a run that meets one says nothing about the unit. */
public class InstrumentFault extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final String instrument;
  private final String doing;
  private final String found;
  private final String remedy;

  /**
   * @param instrument role on the bench
   * @param doing what was being done
   * @param found what came instead
   * @param remedy what the person should do, one sentence; shown as it is
   */
  public InstrumentFault(String instrument, String doing, String found, String remedy) {
    super(instrument + ": " + doing + ": " + found + ". " + remedy);
    this.instrument = instrument;
    this.doing = doing;
    this.found = found;
    this.remedy = remedy;
  }

  public String instrument() {
    return instrument;
  }

  public String doing() {
    return doing;
  }

  public String found() {
    return found;
  }

  public String remedy() {
    return remedy;
  }
}
