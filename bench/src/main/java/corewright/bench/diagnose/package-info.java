/** Which part of the converter the readings point at, and how surely. Pure. */
package corewright.bench.diagnose;
