/**
 * A file that somebody drops on a page: read with every guess shown, corrected, kept on request.
 */
package corewright.station.web.dropped;
