/** An emulated bench and units to try the station on without hardware. */
package corewright.station.demo;
