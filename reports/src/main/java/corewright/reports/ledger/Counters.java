package corewright.reports.ledger;

import org.jdbi.v3.core.Handle;

/** Numbers that are given out once. */
final class Counters {
  private Counters() {}

  static long next(Handle handle, String name) {
    return handle
        .createQuery("UPDATE counter SET value = value + 1 WHERE name = :name RETURNING value")
        .bind("name", name)
        .mapTo(Long.class)
        .one();
  }
}
