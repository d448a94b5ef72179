/** The command line. */
package corewright.station.cli;
