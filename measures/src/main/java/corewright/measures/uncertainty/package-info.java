/**
 * How well a number is known, after JCGM 100 (the law of propagation, budgets) and JCGM 101 (Monte
 * Carlo).
 */
package corewright.measures.uncertainty;
