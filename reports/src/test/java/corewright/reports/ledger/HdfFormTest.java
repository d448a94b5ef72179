package corewright.reports.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.jhdf.HdfFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HdfFormTest {
  @TempDir private Path folder;

  @Test
  void theLibraryOfTheFormatReadsItToo() throws Exception {
    assumeTrue(Files.exists(Path.of("/usr/bin/h5dump")), "h5dump (hdf5-tools) is not installed");
    List<Column> columns =
        List.of(
            new Column("serial", Column.Kind.TEXT),
            new Column("visits", Column.Kind.WHOLE),
            new Column("value", Column.Kind.REAL));
    try (HdfForm form = new HdfForm(folder, "unit", columns)) {
      form.row(List.of("SN 0698-114", 7L, 43.12));
      form.row(List.of("", 8L, -0.5));
    }
    String dumped = h5dump(folder.resolve("unit.h5"));
    assertTrue(dumped.contains("(0): \"SN 0698-114\", \"\""), dumped);
    assertTrue(dumped.contains("H5T_STD_I64LE") && dumped.contains("(0): 7, 8"), dumped);
    assertTrue(dumped.contains("H5T_IEEE_F64LE") && dumped.contains("(0): 43.12, -0.5"), dumped);
  }

  @Test
  void aLongTableGoesOnInAnotherFile() {
    List<Column> one = List.of(new Column("number", Column.Kind.WHOLE));
    try (HdfForm form = new HdfForm(folder, "long", one, 3 * Long.BYTES)) {
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

  @Test
  void aLongTextAmongShortOnesDoesNotFillTheMemory() {
    List<Column> one = List.of(new Column("text", Column.Kind.TEXT));
    List<String> texts = List.of("aa", "bb", "cc", "dd", "e".repeat(20), "ff", "gg");
    try (HdfForm form = new HdfForm(folder, "wide", one, 40)) {
      texts.forEach(text -> form.row(List.of(text)));
    }
    List<String> all = new ArrayList<>();
    for (String part : List.of("wide", "wide-2", "wide-3")) {
      try (HdfFile file = new HdfFile(folder.resolve(part + ".h5"))) {
        all.addAll(List.of((String[]) file.getDatasetByPath("text").getData()));
      }
    }
    assertEquals(texts, all);
  }

  private static String h5dump(Path file) throws IOException, InterruptedException {
    Process process = new ProcessBuilder("/usr/bin/h5dump", file.toString()).start();
    String out = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertEquals(0, process.waitFor(), out);
    return out;
  }
}
