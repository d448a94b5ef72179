/**
 * What a record is made of by frequency: windows, calibrated spectra, harmonics, the sine fits of
 * IEEE 1057. Records are evenly sampled; amplitudes are of the record's unit.
 */
package corewright.measures.spectrum;
