/** The places of the console, one class each. */
package corewright.station.web.place;
