/** Rebuild, replace or return, with the row that decided. Pure. */
package corewright.bench.triage;
