package corewright.bench.port;

/**
 * A serial port of this computer.
 *
 * @param path what a bench description calls it
 * @param title what the system says about it
 * @param usb {@code vendor:product} in hex, empty for a port that is not on USB
 * @param serial serial number of the USB adapter, empty where it has none
 */
public record PortInfo(String path, String title, String usb, String serial) {}
