package corewright.profiles;

/**
 * A supply feed of the unit and how well it must hold.
 *
 * @param name as the capture calls it, {@code input} where there is only one
 * @param zones its edges; the family's where the profile gives none
 */
public record SupplyFeed(String name, InputZones zones) {}
