/**
 * How long units last: lifetimes of which many have not ended yet. Time is in the unit that the
 * caller counts in, and results are in the same one.
 */
package corewright.measures.reliability;
