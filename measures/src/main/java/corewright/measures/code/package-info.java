/**
 * Kernels on the codes of a 16-bit digitizer, before anything is scaled: exact where integers are,
 * and made for records of many millions of samples. A code times the value of one code is the
 * reading; {@code double} arithmetic on the same codes gives the same results, slower.
 *
 * <p>Their loops are plain on purpose. The second compiler of Java 17 turns a loop into vector
 * instructions only where it does one simple thing to {@code int} or {@code float} arrays at one
 * index; unrolling by hand, branches and {@code Math.min} prevent it.
 */
package corewright.measures.code;
