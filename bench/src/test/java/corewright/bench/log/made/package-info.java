/**
 * Logs made up for tests: what a vehicle did (physics), how a tool polled it, how an export wrote
 * it down. Shares no class with the reader, so that a mistake there cannot cancel out here.
 */
package corewright.bench.log.made;
