package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** POSIX close(2): a disk that is full may say so only when a file is closed. */
class TableFormsCloseTest {
  private final List<String> closed = new ArrayList<>();

  @Test
  void theFirstThatFailsIsToldAndTheOthersAreClosedAllTheSame() {
    IOException full = new IOException("No space left on device");
    TableForms forms =
        new TableForms(List.of(form("csv", full), form("json", new IOException()), form("h5")));
    assertSame(full, assertThrows(IOException.class, forms::close));
    assertEquals(List.of("csv", "json", "h5"), closed);
  }

  private TableForm form(String name, IOException... failing) {
    return new TableForm() {
      @Override
      public void row(List<@Nullable Object> cells) {
        throw new UnsupportedOperationException("there are no rows");
      }

      @Override
      public void close() throws IOException {
        closed.add(name);
        for (IOException fault : failing) {
          throw fault;
        }
      }
    };
  }
}
