package corewright.bench.commission;

import corewright.bench.commission.WiringFinding.Kind;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import java.util.Optional;

/** One channel against what is really there: sign, presence, factor. Read from the top. */
final class Scale {
  /** Less than this share of what is there is nothing: a lead that is off. */
  private static final double NOTHING = 0.02;

  /** Common practice, no source: two 1 % resistors of a divider and a shunt are off by no more. */
  private static final double CALIBRATION = 0.03;

  /** Where the factor is known no better, a wrong one would not be noticed. */
  private static final double TOLD = 0.1;

  private Scale() {}

  /**
   * @param what the channel
   * @param read what it read beyond its zero
   * @param there what is there, with its uncertainty
   * @param leads which leads make its sign
   */
  static WiringFinding of(String what, Measurement read, Measurement there, String leads) {
    String saw =
        "Channel "
            + what
            + " reads "
            + Figures.withU(read)
            + " where "
            + Figures.withU(there)
            + " is there";
    if (Math.abs(there.value()) <= 2 * there.u()) {
      return new WiringFinding(
          what,
          Kind.IN_DOUBT,
          saw + ": that is nothing to hold it against.",
          "Look whether the source is connected and on.",
          Optional.empty());
    }
    Measurement ratio = ratio(read, there);
    double size = Math.abs(ratio.value());
    if (2 * ratio.u() > TOLD) {
      return new WiringFinding(
          what,
          Kind.IN_DOUBT,
          saw + ": its scale is not known within 10 %.",
          "Take a smaller resistor, so that more flows, or a quieter channel.",
          Optional.of(ratio));
    }
    if (size < NOTHING) {
      return new WiringFinding(
          what,
          Kind.NOTHING_READ,
          saw + ": nothing arrives.",
          "Connect " + leads + ".",
          Optional.of(ratio));
    }
    boolean scaled = Math.abs(size - 1) > Math.max(CALIBRATION, 2 * ratio.u());
    if (ratio.value() < 0) {
      return new WiringFinding(
          what,
          Kind.REVERSED,
          saw + ": reversed" + (scaled ? ", and " + factor(ratio) : "") + ".",
          "Swap " + leads + (scaled ? ", then look at its scale." : "."),
          Optional.of(ratio));
    }
    if (scaled) {
      return new WiringFinding(
          what,
          Kind.WRONG_SCALE,
          saw + ": " + factor(ratio) + ".",
          "Look at its divider or shunt; or, if that is as wanted, multiply its lsb, which the"
              + " board or the digitizer's dialect states, by "
              + Figures.number(1 / ratio.value(), 4)
              + ".",
          Optional.of(ratio));
    }
    if (Math.abs(ratio.value() - 1) > 2 * ratio.u()) {
      return new WiringFinding(
          what,
          Kind.TO_CALIBRATE,
          saw + ": " + factor(ratio) + ".",
          "Calibrate it; until then this counts as its uncertainty.",
          Optional.of(ratio));
    }
    return new WiringFinding(what, Kind.RIGHT, saw + ".", "", Optional.of(ratio));
  }

  private static String factor(Measurement ratio) {
    return "it reads "
        + Figures.withU(new Measurement(Math.abs(ratio.value()), ratio.u(), Unit.ONE))
        + " times what is there (k = 2)";
  }

  private static Measurement ratio(Measurement read, Measurement there) {
    double value = read.value() / there.value();
    double u = Math.hypot(read.u(), value * there.u()) / Math.abs(there.value());
    return new Measurement(value, u, Unit.ONE);
  }
}
