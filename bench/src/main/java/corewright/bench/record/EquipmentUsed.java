package corewright.bench.record;

/**
 * An instrument or fixture that took part in a run, as the document prints it.
 *
 * @param role as {@code load}
 * @param identity its {@code *IDN?} answer, or what the file says made it
 * @param calibration certificate and due date, or {@code not calibrated}
 */
public record EquipmentUsed(String role, String identity, String calibration) {}
