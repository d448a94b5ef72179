package corewright.measures;

import corewright.measures.uncertainty.Budget;

/**
 * What the uncertainty of one reading is made of.
 *
 * @param hold index of the hold
 * @param budget its result is the reading
 */
public record HoldBudget(int hold, Quantity quantity, Budget budget) {}
