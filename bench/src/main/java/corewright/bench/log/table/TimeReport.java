package corewright.bench.log.table;

/**
 * What the times of a log are and how good they are.
 *
 * @param column the name it has; {@code rows} where rows were counted
 * @param how it was read, one clause
 * @param assumed whether the rate was typed, and nothing was measured
 * @param perSignal whether each signal has a time of its own
 */
public record TimeReport(
    String column, String how, double confidence, boolean assumed, boolean perSignal) {}
