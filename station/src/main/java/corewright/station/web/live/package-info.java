/** The bench while it runs: one run at a time, watched by anybody, stopped by anybody. */
package corewright.station.web.live;
