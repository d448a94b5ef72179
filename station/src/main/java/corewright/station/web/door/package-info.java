/** Who comes in: hosts, sessions, proofs of form, limits. Everything refused is written down. */
package corewright.station.web.door;
