/**
 * Statistics on plain numbers that know nothing of waveforms: summaries, fits, intervals. Numbers
 * are in whatever unit the caller has; results say so.
 */
package corewright.measures.statistics;
