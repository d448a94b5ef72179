package corewright.bench.log;

/** One sample. */
public record Dot(double t_s, double value) {}
