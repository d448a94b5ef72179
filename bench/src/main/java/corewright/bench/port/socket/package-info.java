/** Lines over a loopback socket, for systems on which an emulated bench can have no serial port. */
package corewright.bench.port.socket;
