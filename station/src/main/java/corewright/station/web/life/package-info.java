/** The life of one unit, on one page. */
package corewright.station.web.life;
