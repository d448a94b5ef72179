/** What is tried out on emulated instruments. */
package corewright.station.training;
