/**
 * The console: the shop's screens, served on this machine. A place asks one use case of {@code
 * work} and shows a page; nothing is decided, measured or stored here.
 */
package corewright.station.web;
