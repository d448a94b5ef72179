package corewright.bench.record;

/** Where a unit goes. PENDING is none of them and always names its question. */
public enum Disposition {
  REBUILD,
  REPLACE,
  RETURN,
  PENDING
}
