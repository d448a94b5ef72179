/** What a capacitor holds: capacitance, energy, and the time until it is safe. */
package corewright.measures.storage;
