/**
 * Any export of a scan tool, read into rows of time and named channels: delimiter, decimal mark,
 * header, units and time are guessed, every guess is kept with its reason and can be overridden.
 * Pure.
 */
package corewright.bench.log.table;
