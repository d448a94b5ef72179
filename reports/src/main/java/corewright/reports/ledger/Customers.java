package corewright.reports.ledger;

import java.util.List;
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

  /** Those whose names were not removed. */
  static List<String> names(Handle handle) {
    return handle
        .select(
            "SELECT name FROM customer WHERE name NOT LIKE '(removed)%' ORDER BY name LIMIT 1000")
        .mapTo(String.class)
        .list();
  }

  /** A text that may begin with a person's code, with the name in its place. */
  static String named(Handle handle, String text) {
    int comma = text.indexOf(", ");
    return text.startsWith("K-") && comma > 0
        ? name(handle, text.substring(0, comma)) + text.substring(comma)
        : text;
  }

  /**
   * Removes a person's name for good; what happened to their units stays, under their code.
   *
   * @return the documents on disk that still print the name
   */
  static List<String> forget(Handle handle, String code) {
    handle.execute("UPDATE customer SET name = ? WHERE code = ?", "(removed) " + code, code);
    return handle
        .select(
            "SELECT DISTINCT d.path FROM document d JOIN visit v ON v.tag = d.tag AND v.number ="
                + " d.visit WHERE v.customer = ? ORDER BY d.path",
            code)
        .mapTo(String.class)
        .list();
  }

  /**
   * The code of a customer who is known by this name or code.
   *
   * @throws LedgerFault if nobody is
   */
  static String known(Handle handle, String nameOrCode) {
    return handle
        .select("SELECT code FROM customer WHERE name = ? OR code = ?", nameOrCode, nameOrCode)
        .mapTo(String.class)
        .findFirst()
        .orElseThrow(
            () ->
                new LedgerFault(
                    "No customer is called " + nameOrCode,
                    "Write the name as it was received, or give the code, as K-00012"));
  }

  private static String add(Handle handle, String name) {
    String code = String.format(Locale.ROOT, "K-%05d", Counters.next(handle, "customer"));
    handle.execute("INSERT INTO customer (code, name) VALUES (?, ?)", code, name);
    return code;
  }
}
