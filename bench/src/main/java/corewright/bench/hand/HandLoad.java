package corewright.bench.hand;

import corewright.bench.port.InstrumentFault;
import corewright.bench.port.Load;
import corewright.measures.Figures;
import corewright.measures.Measurement;

/**
 * A load that a person sets: a rheostat, lamps, a load without a port. The measured current proves
 * that it was set; nothing can prove that it was switched off, so the run goes by the source, the
 * relay and the discharge.
 */
public final class HandLoad implements Load {
  private final Hands hands;
  private double current_A;
  private boolean on;

  public HandLoad(Hands hands) {
    this.hands = hands;
  }

  @Override
  public String role() {
    return "load";
  }

  /** In the form of IEEE 488.2, 10.14, so that the record names who set it. */
  @Override
  public String identity() {
    return "BY HAND," + hands.name().replace(',', ' ') + ",0,0";
  }

  @Override
  public boolean isSetByHand() {
    return true;
  }

  @Override
  public void set(double wanted_A) {
    if (!(wanted_A >= 0) || Double.isInfinite(wanted_A)) {
      throw new InstrumentFault(
          role(), "setting it", wanted_A + " A is no current", "Correct the profile.");
    }
    current_A = wanted_A;
    if (on) {
      hands.please("Set the load to " + amperes() + ".");
    }
  }

  @Override
  public void input(boolean wanted) {
    if (wanted) {
      hands.please("Set the load to " + amperes() + " and switch it on.");
    } else if (on) {
      hands.please("Switch the load off.");
    }
    on = wanted;
  }

  @Override
  public Measurement current() {
    throw new InstrumentFault(
        role(),
        "asking for its current",
        "it is set by hand and cannot be asked",
        "Look at the digitizer's channel 'load'.");
  }

  @Override
  public void off() {
    input(false);
  }

  @Override
  public void close() {}

  private String amperes() {
    return Figures.number(current_A, 2) + " A";
  }
}
