package corewright.reports.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.reports.Samples;
import io.jhdf.HdfFile;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** What is taken out as JSON and HDF5 is what lies in the tables, cell by cell. */
@ParameterizedClass
@EnumSource(Kept.class)
class TableFormsTest {
  private static final Clock CLOCK = Clock.fixed(Samples.MORNING, ZoneOffset.UTC);
  private static final String SERIAL = "=1+1 Ω \"'\\ \n,";

  @Parameter private Kept kept;
  @TempDir private Path folder;

  @Test
  void everyFormHoldsWhatLiesInTheTables() throws Exception {
    try (Ledger ledger = kept.open(folder, "bench-1", CLOCK)) {
      ledger.receive(Samples.core(Tags.of(1), SERIAL));
      ledger.receive(Samples.core(Tags.of(2), "115"));
      ledger.runEnded(Samples.run("a", Tags.of(1)));
      ledger.runBegun(Samples.begun("b", Tags.of(2)));
      new Raw(kept.url(folder)).execute("UPDATE finding SET u = NULL");
      ledger.custody().export(folder, Optional.empty(), false, "x");
    }
    asJson();
    asHdf5();
  }

  private void asJson() throws Exception {
    for (String table : List.of("unit", "run", "finding", "lot")) {
      List<Map<String, Object>> rows = rows(table);
      JsonNode read = new ObjectMapper().readTree(folder.resolve(table + ".json").toFile());
      assertTrue(read.isArray());
      assertEquals(rows.size(), read.size(), table);
      for (int i = 0; i < read.size(); i++) {
        Iterator<Map.Entry<String, JsonNode>> cells = read.get(i).properties().iterator();
        for (Map.Entry<String, Object> cell : rows.get(i).entrySet()) {
          Map.Entry<String, JsonNode> found = cells.next();
          assertEquals(cell.getKey(), found.getKey());
          assertEquals(cell.getValue() instanceof Number, found.getValue().isNumber());
          assertEquals(String.valueOf(cell.getValue()), found.getValue().asText());
        }
        assertTrue(!cells.hasNext());
      }
    }
  }

  private void asHdf5() {
    for (String table : List.of("unit", "run", "finding", "lot", "event")) {
      List<Map<String, Object>> rows = rows(table);
      try (HdfFile file =
          new HdfFile(folder.resolve(table.equals("event") ? "events.h5" : table + ".h5"))) {
        assertEquals((long) rows.size(), file.getAttribute("rows").getData());
        String[] columns = (String[]) file.getAttribute("columns").getData();
        assertEquals(rows.isEmpty() ? 0 : columns.length, file.getChildren().size(), table);
        for (String column : rows.isEmpty() ? new String[0] : columns) {
          List<Object> cells = rows.stream().map(row -> row.get(column)).toList();
          Object read = file.getDatasetByPath(column).getData();
          if (read instanceof long[] whole) {
            assertArrayEquals(
                cells.stream().mapToLong(c -> ((Number) c).longValue()).toArray(), whole);
          } else if (read instanceof double[] real) {
            assertArrayEquals(
                cells.stream().mapToDouble(c -> c == null ? Double.NaN : (Double) c).toArray(),
                real);
          } else {
            assertArrayEquals(
                cells.stream().map(c -> c == null ? "" : c.toString()).toArray(), (Object[]) read);
          }
        }
      }
    }
  }

  private List<Map<String, Object>> rows(String table) {
    return Jdbi.create(kept.url(folder))
        .withHandle(h -> h.createQuery("SELECT * FROM " + table).mapToMap().list());
  }
}
