/**
 * The roles that a bench is made of, named for the role and not the make, and the faults they
 * report.
 */
package corewright.bench.port;
