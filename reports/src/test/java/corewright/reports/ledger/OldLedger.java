package corewright.reports.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Objects;
import org.jdbi.v3.core.Jdbi;

/** A ledger of an older schema, as its program left it. */
final class OldLedger {
  static final int EVENTS = 9;

  private OldLedger() {}

  static void write(Path file) throws IOException, SQLException {
    try (InputStream dump = OldLedger.class.getResourceAsStream("schema-3.sql")) {
      String text = new String(Objects.requireNonNull(dump).readAllBytes(), UTF_8);
      Jdbi.create("jdbc:sqlite:" + file)
          .useHandle(
              handle -> {
                StringBuilder statement = new StringBuilder();
                for (String line : text.lines().toList()) {
                  if (line.startsWith("--")) {
                    continue;
                  }
                  statement.append(line).append('\n');
                  boolean trigger = statement.indexOf("CREATE TRIGGER") == 0;
                  if (trigger ? line.endsWith("END;") : line.endsWith(";")) {
                    handle.getConnection().createStatement().execute(statement.toString());
                    statement.setLength(0);
                  }
                }
              });
    }
  }
}
