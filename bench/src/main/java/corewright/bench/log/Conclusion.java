package corewright.bench.log;

/** What a log comes to. Declared in the order in which one crank decides for the whole file. */
public enum Conclusion {
  SUPPORTS_FAULT("supports-fault", "supports a fault of the module"),
  SUPPORTS_GOOD("supports-good", "speaks for the module"),
  INCONCLUSIVE("inconclusive", "decides nothing"),
  VOID("void", "says nothing about the module: its supply was too low");

  private final String id;
  private final String words;

  Conclusion(String id, String words) {
    this.id = id;
    this.words = words;
  }

  /** As JSON has it. */
  public String id() {
    return id;
  }

  /** After "this log". */
  public String words() {
    return words;
  }

  /** The same of one crank, whose supply is told beside it. */
  public String brief() {
    return words.split(":", 2)[0];
  }
}
