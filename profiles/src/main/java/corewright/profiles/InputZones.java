package corewright.profiles;

/**
 * How well the input must hold for the output to be judged.
 *
 * @param good_V at or above: valid
 * @param tolerated_V at or above, but below good: tolerated; below: void
 */
public record InputZones(double good_V, double tolerated_V) {}
