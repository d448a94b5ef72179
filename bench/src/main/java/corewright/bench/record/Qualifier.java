package corewright.bench.record;

/** Whether the input held well enough for the output to be judged. */
public enum Qualifier {
  VALID,
  TOLERATED,
  VOID
}
