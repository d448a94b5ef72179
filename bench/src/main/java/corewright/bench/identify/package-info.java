/** Which variant a unit is, from its cues. Pure. */
package corewright.bench.identify;
