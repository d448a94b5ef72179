/** The sampled waveforms of a run, kept as they arrive and sealed afterwards. */
package corewright.bench.capture;
