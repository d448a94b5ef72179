/** Captures and readings as charts. */
package corewright.reports.chart;
