/**
 * What the unit shall do: families, variants and their cues, checklists, load-hold profiles,
 * limits, and the reader that reports every mistake with file and line.
 */
package corewright.profiles;
