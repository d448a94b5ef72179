/** The one class that opens a serial port. */
package corewright.bench.port.serial;
