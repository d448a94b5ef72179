/** Readings held against limits: input qualifier, findings, verdict. Pure. */
package corewright.bench.judge;
