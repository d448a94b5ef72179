/** The life of a unit in the shop: stages, what may happen in each, and how claims are classed. */
package corewright.bench.life;
