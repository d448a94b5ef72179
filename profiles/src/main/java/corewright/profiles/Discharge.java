package corewright.profiles;

/**
 * How the stored charge is taken out through the fixture.
 *
 * @param resistor_ohm discharge resistor of this family, Ω
 * @param power_W its rating, W
 * @param safe_V below this, and not rising, the unit counts as discharged
 * @param within_s the decay must reach {@code safe_V} within this time, s
 */
public record Discharge(double resistor_ohm, double power_W, double safe_V, double within_s) {}
