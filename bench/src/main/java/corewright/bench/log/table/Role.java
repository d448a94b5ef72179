package corewright.bench.log.table;

/** What a column of a log is taken for. */
public enum Role {
  TIME("time"),
  FRAME("frame number"),
  SUPPLY("supply"),
  OUTPUT("output"),
  SPEED("engine speed"),
  FUEL("fuel quantity"),
  SYNC("synchronisation"),
  /** The output that was asked for: never taken for the one measured. */
  COMMANDED("output as commanded, not measured"),
  /** Called boost, and is a pressure. */
  MANIFOLD("pressure in the intake manifold, not a voltage"),
  /** A voltage whose scale is not known. */
  NO_SCALE("a voltage without a usable scale, not used"),
  /** Called as the output is, and perhaps a torque, a temperature, a duty. */
  NOT_SAID("named like the output, but nothing says that it is a voltage: not used"),
  /** Says who or where: dropped at reading. */
  PERSONAL("personal or position, dropped"),
  NONE("not used");

  private final String words;

  Role(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** Whether the samples of such a column are kept. */
  public boolean kept() {
    return switch (this) {
      case SUPPLY, OUTPUT, SPEED, FUEL, SYNC -> true;
      default -> false;
    };
  }
}
