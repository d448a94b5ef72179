/** Puts kernels together: a capture in, the readings of every hold out. */
package corewright.measures.meter;
