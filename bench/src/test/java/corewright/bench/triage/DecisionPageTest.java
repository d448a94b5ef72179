package corewright.bench.triage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import corewright.bench.record.Disposition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * The table in {@code bench/README.md} is written by this test: run it with {@code
 * -Dcorewright.write=true} to write it anew, without to see that it is still true.
 */
class DecisionPageTest {
  private static final String BEGIN = "<!-- decision table: written by DecisionPageTest -->\n";
  private static final String END = "<!-- end of decision table -->\n";

  @Test
  void thePageShowsEveryRowWithItsWitness() throws IOException {
    Path page = Path.of(System.getProperty("corewright.home"), "bench", "README.md");
    String text = Files.readString(page);
    int from = text.indexOf(BEGIN) + BEGIN.length();
    int to = text.indexOf(END);
    String table = table();
    if (Boolean.getBoolean("corewright.write")) {
      Files.writeString(page, text.substring(0, from) + table + text.substring(to));
      return;
    }
    assertEquals(table, text.substring(from, to), "write it anew with -Dcorewright.write=true");
  }

  private static String table() {
    StringBuilder table = new StringBuilder();
    table.append(
        String.format(
            Locale.ROOT,
            "Revision %d, tried on %,d combinations of its inputs.\n\n",
            DecisionTable.REVISION,
            Space.SIZE));
    table.append(
        "| row | it decides | the sentence, or the question and whose it is | its witness |\n");
    table.append("|---|---|---|---|\n");
    for (Row row : DecisionTable.ROWS) {
      String witness = DecisionTableTest.WITNESSES.get(row.id());
      table
          .append("| ")
          .append(row.id())
          .append(" | ")
          .append(row.disposition())
          .append(row.destination().isEmpty() ? "" : " → " + row.destination())
          .append(" | ")
          .append(words(row))
          .append(" | ")
          .append(witness.isEmpty() ? "the plain case" : "`" + witness + "`")
          .append(" |\n");
    }
    return table.toString();
  }

  private static String words(Row row) {
    return row.disposition() == Disposition.PENDING
        ? row.question().apply(Facts.NONE) + " (" + row.owner() + ", " + row.due_days() + " d)"
        : row.sentence().apply(Facts.NONE);
  }
}
