/**
 * Kernels on a stretch of one waveform: statistics, trend, scatter, spectrum, transients. Stretches
 * are half-open sample ranges {@code [from, to)}; results are in the waveform's own unit.
 */
package corewright.measures.wave;
