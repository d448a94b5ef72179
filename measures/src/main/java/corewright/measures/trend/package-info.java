/** How a level moves while it should not: slopes, steps, and the way to a new level. */
package corewright.measures.trend;
