/**
 * Records of other instruments and programs, as text: columns found by their names, values kept as
 * the decimals that were written, the time base checked line by line.
 */
package corewright.bench.capture.csv;
