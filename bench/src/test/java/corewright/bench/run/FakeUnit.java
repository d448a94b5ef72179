package corewright.bench.run;

/** A converter with an output capacitor, just good enough to exercise the engine. */
final class FakeUnit {
  static final double CAPACITANCE_F = 0.002;
  private static final double DISCHARGE_OHM = 470;

  boolean sourceOn;
  double source_V;
  double limit_A;
  boolean loadOn;
  double load_A;
  boolean discharging = true;
  boolean relayClosed;
  boolean chainWhole = true;
  boolean heldOn; // the fixture's watchdog has tripped

  boolean shorted;
  boolean sourceSticks;
  boolean dischargeBroken;
  double resistance_factor = 1;
  double regulates_V = 48;
  double hidden_A; // charge that flows in from nowhere, for a capacitor behind a diode

  double case_C = 23;
  double deadInput_ohm = Double.POSITIVE_INFINITY;
  double deadOutput_ohm = 6800;
  double diode_V = 0.5;

  double capacitor_V;
  double input_V;
  double input_A;

  void pass(double seconds) {
    input_V = sourceOn && relayClosed ? source_V : 0;
    double drawn_A = loadOn && capacitor_V > 0.5 ? load_A : 0;
    input_A = 0;
    if (shorted && input_V > 0) {
      input_A = Math.min(limit_A, input_V / 0.1);
      input_V = input_A * 0.1;
    }
    if (input_V > 7) {
      capacitor_V += (regulates_V - 0.1 * drawn_A - capacitor_V) * Math.min(1, seconds / 0.01);
      input_A = 0.1 + capacitor_V * drawn_A / (0.85 * input_V);
    } else {
      double leaving_A =
          drawn_A
              + (discharging && !dischargeBroken
                  ? capacitor_V / (resistance_factor * DISCHARGE_OHM)
                  : 0)
              - hidden_A;
      capacitor_V = Math.max(0, capacitor_V - leaving_A * seconds / CAPACITANCE_F);
    }
  }
}
