/** What a run leaves behind: immutable results. */
package corewright.bench.record;
