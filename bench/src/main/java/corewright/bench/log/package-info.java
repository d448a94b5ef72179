/**
 * The customer's log: cranks found in it, the input qualified, the output judged, with every reason
 * why that could be wrong. Evidence, never a test. Pure.
 */
package corewright.bench.log;
