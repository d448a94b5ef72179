package corewright.profiles;

/**
 * What a meter must find between the terminals of a unit without charge before it is powered: less
 * is a short. A healthy unit shows more, or rises to it while the meter's current charges it.
 *
 * @param input_ohm between the input terminals, at least, Ω
 * @param output_ohm between the output terminals with the discharge resistor lifted, at least, Ω
 */
public record DeadLimits(double input_ohm, double output_ohm) {}
