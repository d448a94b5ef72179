package corewright.reports.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A table as a JSON array of objects, one a line: for programs. */
final class JsonForm implements TableForm {
  private final JsonGenerator to;
  private final List<Column> columns;

  JsonForm(Path file, List<Column> columns) throws IOException {
    this.columns = columns;
    to = new JsonFactory().createGenerator(Files.newBufferedWriter(file));
    to.setPrettyPrinter(new ALineEach());
    to.writeStartArray();
  }

  @Override
  public void row(List<@Nullable Object> cells) throws IOException {
    to.writeStartObject();
    for (int i = 0; i < columns.size(); i++) {
      to.writeFieldName(columns.get(i).name());
      Object cell = cells.get(i);
      if (cell instanceof Long whole) {
        to.writeNumber(whole);
      } else if (cell instanceof Double real) {
        to.writeNumber(real);
      } else {
        to.writeString((String) cell); // writes null as null
      }
    }
    to.writeEndObject();
  }

  @Override
  public void close() throws IOException {
    try (to) {
      to.writeEndArray();
      to.writeRaw('\n');
    }
  }

  /** Nothing between the fields of a row, a line feed before each row. */
  private static final class ALineEach extends MinimalPrettyPrinter {
    private static final long serialVersionUID = 1;

    @Override
    public void beforeArrayValues(JsonGenerator to) throws IOException {
      to.writeRaw('\n');
    }

    @Override
    public void writeArrayValueSeparator(JsonGenerator to) throws IOException {
      to.writeRaw(",\n");
    }

    @Override
    public void writeEndArray(JsonGenerator to, int rows) throws IOException {
      to.writeRaw("\n]");
    }
  }
}
