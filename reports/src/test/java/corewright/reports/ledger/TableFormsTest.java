package corewright.reports.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.reports.Samples;
import io.jhdf.HdfFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.BeforeEach;
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

  @BeforeEach
  void export() {
    try (Ledger ledger = kept.open(folder, "bench-1", CLOCK)) {
      ledger.receive(Samples.core(Tags.of(1), SERIAL));
      ledger.receive(Samples.core(Tags.of(2), "115"));
      ledger.runEnded(Samples.run("a", Tags.of(1)));
      ledger.runBegun(Samples.begun("b", Tags.of(2)));
      new Raw(kept.url(folder)).execute("UPDATE finding SET u = NULL");
      ledger.custody().export(folder, Optional.empty(), "x");
    }
  }

  @Test
  void asJson() throws Exception {
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

  @Test
  void asHdf5() {
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

  @Test
  void theLibraryOfTheFormatReadsItToo() throws Exception {
    assumeTrue(Files.exists(Path.of("/usr/bin/h5dump")), "h5dump (hdf5-tools) is not installed");
    String units = h5dump(folder.resolve("unit.h5"));
    assertTrue(units.contains("\"115\""), units);
    assertTrue(units.contains("H5T_STD_I64LE"), units);
    assertTrue(h5dump(folder.resolve("finding.h5")).contains("43.12"));
  }

  @Test
  void aLongTableGoesOnInAnotherFile() {
    List<Column> one = List.of(new Column("number", Column.Kind.WHOLE));
    try (HdfForm form = new HdfForm(folder, "long", one, 3)) {
      for (long i = 0; i < 7; i++) {
        form.row(List.of(i));
      }
    }
    List<Long> all = new ArrayList<>();
    for (String part : List.of("long", "long-2", "long-3")) {
      try (HdfFile file = new HdfFile(folder.resolve(part + ".h5"))) {
        for (long cell : (long[]) file.getDatasetByPath("number").getData()) {
          all.add(cell);
        }
      }
    }
    assertEquals(List.of(0L, 1L, 2L, 3L, 4L, 5L, 6L), all);
  }

  private List<Map<String, Object>> rows(String table) {
    return Jdbi.create(kept.url(folder))
        .withHandle(h -> h.createQuery("SELECT * FROM " + table).mapToMap().list());
  }

  private static String h5dump(Path file) throws IOException {
    Process process = new ProcessBuilder("/usr/bin/h5dump", file.toString()).start();
    return new String(process.getInputStream().readAllBytes(), UTF_8);
  }
}
