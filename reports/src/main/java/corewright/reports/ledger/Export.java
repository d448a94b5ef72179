package corewright.reports.ledger;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Everything that the ledger holds as files that any program reads: each table, and every event
 * with its hash and signature, as CSV, JSON and HDF5. For one customer: the units' visits for that
 * customer, and nothing of anybody else.
 */
final class Export {
  /** Tables with the condition that ties a row to a visit {@code v}. */
  private static final Map<String, String> OF_A_VISIT = new LinkedHashMap<>();

  static {
    OF_A_VISIT.put("unit", "t.tag = v.tag");
    OF_A_VISIT.put("visit", "t.tag = v.tag AND t.number = v.number");
    OF_A_VISIT.put("life", "t.tag = v.tag AND t.visit = v.number");
    OF_A_VISIT.put("run", "t.tag = v.tag AND t.visit = v.number");
    OF_A_VISIT.put(
        "finding", "t.run IN (SELECT id FROM run r WHERE r.tag = v.tag AND r.visit = v.number)");
    OF_A_VISIT.put("decision", "t.tag = v.tag AND t.visit = v.number");
    OF_A_VISIT.put("document", "t.tag = v.tag AND t.visit = v.number");
    OF_A_VISIT.put("fitted", "t.tag = v.tag AND t.visit = v.number");
    OF_A_VISIT.put("seal", "t.tag = v.tag AND t.visit = v.number");
    OF_A_VISIT.put("shipment", "t.tag = v.tag AND t.visit = v.number");
    OF_A_VISIT.put("claim", "t.tag = v.tag AND t.shipped = v.number");
    OF_A_VISIT.put("confirmed", "t.tag = v.tag AND t.visit = v.number");
    OF_A_VISIT.put("attached", "t.tag = v.tag AND t.visit = v.number");
    OF_A_VISIT.put("brought", "t.tag = v.tag AND v.number = 1");
  }

  private static final List<String> OF_A_CUSTOMER = List.of("agreement", "deposit");
  private static final List<String> OF_THE_SHOP = List.of("lot", "signer", "content");

  private final Handle handle;
  private final Path folder;
  private final String customer;
  private final LeftOut leftOut;

  private Export(Handle handle, Path folder, String customer, LeftOut leftOut) {
    this.handle = handle;
    this.folder = folder;
    this.customer = customer;
    this.leftOut = leftOut;
  }

  /**
   * Writes the files into an existing folder.
   *
   * @param customer code of a customer; empty: everything
   * @param vehicles whether what looks like the number of a vehicle goes out too
   * @return what was left out, a line for each place
   */
  static List<String> write(Handle handle, Path folder, String customer, boolean vehicles) {
    Export export =
        new Export(
            handle, folder, customer, new LeftOut(vehicles, number -> isSerial(handle, number)));
    try {
      for (Map.Entry<String, String> table : OF_A_VISIT.entrySet()) {
        export.table(
            table.getKey(),
            customer.isEmpty()
                ? ""
                : " WHERE EXISTS (SELECT 1 FROM visit v WHERE v.customer = ? AND "
                    + table.getValue()
                    + ")");
      }
      for (String table : OF_A_CUSTOMER) {
        export.table(table, customer.isEmpty() ? "" : " WHERE t.customer = ?");
      }
      export.table("customer", customer.isEmpty() ? "" : " WHERE t.code = ?");
      if (customer.isEmpty()) {
        for (String table : OF_THE_SHOP) {
          export.table(table, "");
        }
      }
      export.events();
      return export.leftOut.lines();
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write into " + folder, refused);
    }
  }

  private static boolean isSerial(Handle handle, String number) {
    return handle
        .select("SELECT 1 FROM unit WHERE serial_key = ?", Serials.key(number))
        .mapTo(Integer.class)
        .findFirst()
        .isPresent();
  }

  private void table(String name, String where) throws IOException {
    List<Column> columns = Column.of(handle, name);
    try (TableForm to = TableForms.of(folder, name, columns)) {
      var query = handle.createQuery("SELECT t.* FROM " + name + " t" + where);
      if (!customer.isEmpty()) {
        query.bind(0, customer);
      }
      query
          .map((row, context) -> Column.cells(columns, row))
          .useStream(rows -> rows.forEach(cells -> write(to, leftOut.of(name, cells))));
    }
  }

  /** In the order they were written; as JSON one a line, by the words that a signature is over. */
  private void events() throws IOException {
    Map<String, Boolean> theirs = new HashMap<>();
    List<Column> columns = Column.of(handle, "event");
    try (BufferedWriter lines = Files.newBufferedWriter(folder.resolve("events.jsonl"));
        TableForm csv = new CsvForm(folder.resolve("events.csv"), columns);
        TableForm hdf = new HdfForm(folder, "events", columns)) {
      handle
          .createQuery("SELECT * FROM event ORDER BY position")
          .map((row, context) -> new Taken(Events.event(row), Column.cells(columns, row)))
          .useStream(
              all ->
                  all.filter(taken -> isTheirs(taken.event, theirs))
                      .forEach(
                          taken -> {
                            List<@Nullable Object> cells = leftOut.of("event", taken.cells);
                            write(lines, json(leftOut.of(taken.event)));
                            write(csv, cells);
                            write(hdf, cells);
                          }));
    }
  }

  private record Taken(Event event, List<@Nullable Object> cells) {}

  /** A unit's events belong to whoever brought it on the visit that they fall into. */
  private boolean isTheirs(Event event, Map<String, Boolean> theirs) {
    if (customer.isEmpty()) {
      return true;
    }
    String named = Json.read(event.body()).path("customer").asText();
    if (!named.isEmpty()) {
      theirs.put(event.tag(), named.equals(customer));
    } else if (EventKind.beginsAVisit(event.kind())) {
      theirs.put(event.tag(), false);
    }
    return theirs.getOrDefault(event.tag(), false);
  }

  private static String json(Event event) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("chain", event.chain());
    json.put("sequence", event.sequence());
    json.put("at", event.at());
    json.put("who", event.who());
    json.put("kind", event.kind());
    json.put("tag", event.tag());
    json.put("body", event.body());
    json.put("previous", event.previous());
    json.put("hash", event.hash());
    json.put("keyId", event.keyId());
    json.put("signature", event.signature());
    return json.toString();
  }

  private static void write(TableForm to, List<@Nullable Object> cells) {
    try {
      to.row(cells);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write", refused);
    }
  }

  private static void write(BufferedWriter to, String line) {
    try {
      to.write(line);
      to.write('\n');
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write", refused);
    }
  }
}
