/** The engine that runs a load-hold profile: guards, trips, clocks and the safe state. */
package corewright.bench.run;
