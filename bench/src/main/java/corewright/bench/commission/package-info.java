/**
 * A bench on its first day: whether its leads, dividers and shunts are what they should be, how
 * much its channels hum at rest, and how fast it is off. A known resistor stands in the place of a
 * unit; a few volts go through it, and no unit is on the bench.
 */
package corewright.bench.commission;
