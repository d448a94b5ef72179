package corewright.measures.code;

import java.util.Optional;

/**
 * One hold of a long record, in codes and samples.
 *
 * @param start index of its first sample in the record
 * @param window statistics of the output after settling; empty where the hold ends before
 * @param answer to the step that begins it; empty for the first hold of a record, and where there
 *     is no window to refer to
 */
public record HoldCodes(long start, Optional<CodeStatistics> window, Optional<EdgeAnswer> answer) {}
