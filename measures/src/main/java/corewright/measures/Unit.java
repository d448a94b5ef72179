package corewright.measures;

/**
 * Units of every number that leaves a room. Symbols follow the SI Brochure, 9th edition, section 5.
 */
public enum Unit {
  VOLT("V"),
  AMPERE("A"),
  OHM("Ω"),
  WATT("W"),
  SECOND("s"),
  HERTZ("Hz"),
  FARAD("F"),
  JOULE("J"),
  CELSIUS("°C"),
  KELVIN("K"),
  PERCENT("%"),
  VOLT_PER_MINUTE("V/min"),
  AMPERE_SQUARED_SECOND("A²s"),
  ONE("1");

  private final String symbol;

  Unit(String symbol) {
    this.symbol = symbol;
  }

  public String symbol() {
    return symbol;
  }
}
