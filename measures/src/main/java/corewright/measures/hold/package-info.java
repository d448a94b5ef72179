/** Finds the holds of a capture in its measured load current. */
package corewright.measures.hold;
