/**
 * What a guard band costs and buys, after JCGM 106 and ILAC-G8. The probability for a single
 * reading is {@link corewright.measures.Conformity}.
 */
package corewright.measures.conformity;
