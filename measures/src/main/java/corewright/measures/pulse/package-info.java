/** One step from a level to another, in the terms of IEC 60469. */
package corewright.measures.pulse;
