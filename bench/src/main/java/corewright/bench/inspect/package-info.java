/**
 * In which condition a core came: what was looked at, what forbids power, the grade, the mass.
 * Pure.
 */
package corewright.bench.inspect;
