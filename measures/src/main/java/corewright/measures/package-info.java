/**
 * What a waveform says: values with unit and uncertainty, waveforms, and pure functions on them.
 */
package corewright.measures;
