package corewright.reports.ledger;

import java.util.Locale;
import org.jdbi.v3.core.Handle;

/** Customers by code. Events name the code only, so that a person's data can be removed. */
final class Customers {
  private Customers() {}

  /** The code of {@code name}, a new one if the name is new; empty for no name. */
  static String code(Handle handle, String name) {
    if (name.isBlank()) {
      return "";
    }
    return handle
        .createQuery("SELECT code FROM customer WHERE name = :name")
        .bind("name", name)
        .mapTo(String.class)
        .findOne()
        .orElseGet(() -> add(handle, name));
  }

  /** The name behind {@code code}, or the code itself where the name was removed. */
  static String name(Handle handle, String code) {
    return handle
        .createQuery("SELECT name FROM customer WHERE code = :code")
        .bind("code", code)
        .mapTo(String.class)
        .findOne()
        .orElse(code);
  }

  private static String add(Handle handle, String name) {
    String code = String.format(Locale.ROOT, "K-%05d", Counters.next(handle, "customer"));
    handle.execute("INSERT INTO customer (code, name) VALUES (?, ?)", code, name);
    return code;
  }
}
