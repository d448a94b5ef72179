/** From what a sensor gives to degrees: thermocouple type K, Pt100, NTC thermistors. */
package corewright.measures.temperature;
