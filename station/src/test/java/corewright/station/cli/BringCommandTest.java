package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * A sheet as shops keep them, of an invented shop: names of its own, decimal commas, a note that
 * runs over two lines, the code page of an old office, and rows that nobody can read.
 */
class BringCommandTest {
  private static final String SHEET =
      "Auftrag;Eingang;Kunde;Gerät;Serien-Nr.;Fehler;U aus (V);Ausgang;Preis;Telefon\r\n"
          + "101;04.03.2019;Müller Landtechnik;SD48 alt;0698-114;startet kalt"
          + " nicht;47,6;11.03.2019;1.180,50 €;0555 1\r\n"
          + "102;28.02.2020;Orrel;sd48;0698-115;\"geht aus,\n"
          + "\"\"heiß\"\"\";;;;0555 2\r\n"
          + "103;31.02.2020;Orrel;sd48;0698-116;;;;;\r\n"
          + "104;01.03.2020;Orrel;XR 9;0698-117;;;;;\r\n"
          + ";;;;;;;;;\r\n"
          + "105;02.03.2020;Orrel;sd48;0698-118;;viel;;;\r\n"
          + "106;05.03.2020;Orrel;sd48;0698-119;;;01.03.2020;;\r\n"
          + "101;06.03.2020;Orrel;sd48;0698-120;;;;;\r\n"
          + ";07.03.2020;Orrel;sd48;;;;;;\r\n";

  @TempDir private Path folder;
  private final StringWriter err = new StringWriter();
  private Path sheet = Path.of("");

  @BeforeEach
  void aSheet() throws Exception {
    sheet = folder.resolve("old.csv");
    Files.write(sheet, SHEET.getBytes(Charset.forName("windows-1252")));
  }

  @Test
  void howItIsReadIsShownAndNothingIsWritten() throws Exception {
    String shown = ok("bring", sheet.toString());
    for (String expected :
        new String[] {
          "separator ';', decimal mark ',', dates as dd.MM.yyyy",
          "number is 'Auftrag'",
          "family is 'Gerät'",
          "output is 'U aus (V)'",
          "'SD48 alt' is sd48",
          "'Telefon' stays behind",
          "line 2: 2019-03-04  sd48  0698-114  Müller Landtechnik  left 2019-03-11  47.6 V"
              + "  price 1180.50",
          "line 3: 2020-02-28  sd48  0698-115  Orrel  in the shop",
          "line 5: NOT: '31.02.2020' under 'Eingang' is no day as dd.MM.yyyy",
          "line 6: NOT: no family is known for 'XR 9'. Name one for it",
          "line 8: NOT: 'viel' is no number with the decimal mark ,",
          "line 9: NOT: it left before it came",
          "line 10: NOT: number 101 stands in line 2 already",
          "line 11: NOT: it has neither a serial nor a number",
          "2 can be brought, 0 there already, 6 refused. Nothing was written"
        }) {
      assertTrue(shown.contains(expected), expected + "\n" + shown);
    }
    assertTrue(ok("verify", folder.resolve("shop").toString()).contains("0 events"));
  }

  @Test
  void whatWasAcceptedIsThereOnceAndMarkedForWhatItIs() throws Exception {
    JsonNode brought = json("bring", sheet.toString(), "--yes");
    String left = brought.at("/rows/0/tag").asText();
    String here = brought.at("/rows/1/tag").asText();
    JsonNode again = json("bring", sheet.toString(), "--yes");
    assertEquals(0, again.get("rows").size(), again.toString());
    assertEquals(2, again.at("/thereAlready/" + left).asInt(), again.toString());
    assertTrue(ok("verify", folder.resolve("shop").toString()).contains("2 events, 2 with a good"));

    assertTrue(ok("find", "0698-114", "--shop=" + folder.resolve("shop")).contains(left));
    JsonNode life = json("history", left);
    assertTrue(life.toString().contains("brought from old books"), life.toString());
    assertTrue(life.toString().contains("old books, line 2"), life.toString());
    assertTrue(life.toString().contains("1180.50"), life.toString());
    assertFalse(life.toString().contains("0555 1"), "a telephone number that nobody asked for");
    assertFalse(life.toString().contains("Müller"), "a name in the history for good");
    assertEquals(1, run("certificate", left));
    assertTrue(json("board").toString().contains(here));
    assertEquals(0, run("claim", left, "--symptom=dies when hot"), err.toString());
  }

  @Test
  void aMappingThatWasMendedDecides() throws Exception {
    Path how = folder.resolve("how.json");
    ok("bring", sheet.toString(), "--save", how.toString());
    Files.writeString(
        how, Files.readString(how).replace("\"SD48 alt\"", "\"XR 9\" : \"ie110\", \"SD48 alt\""));
    JsonNode rows = json("bring", sheet.toString(), "--mapping", how.toString()).get("rows");
    assertEquals("ie110", rows.get(2).get("family").asText());
    Files.writeString(how, Files.readString(how).replace("Eingang", "Einkauf"));
    assertEquals(1, run("bring", sheet.toString(), "--mapping", how.toString()));
    assertTrue(err.toString().contains("has no column Einkauf"), err.toString());
  }

  /** Nobody can tell the 1st of February from the 2nd of January; ISO 8601 says which. */
  /** A workbook in place of its text, and nothing at all. */
  @Test
  void whatIsNoSheetIsRefusedInWords() throws Exception {
    for (String bytes : new String[] {"", "PK\u0003\u0004\0\0\b"}) {
      Files.writeString(sheet, bytes);
      assertEquals(1, run("bring", sheet.toString()), err.toString());
      assertTrue(err.toString().contains("Save the sheet as CSV"), err.toString());
    }
  }

  @Test
  void aDayThatCanBeTwoIsAskedForAndNotGuessed() throws Exception {
    Files.writeString(sheet, "no,date in,type,s/n\n1,01/02/2020,sd48,A-1\n2,03/04/2020,sd48,A-2\n");
    String shown = ok("bring", sheet.toString());
    assertTrue(shown.contains("'01/02/2020' can be more than one day"), shown);
    assertTrue(shown.contains("0 can be brought, 0 there already, 2 refused"), shown);
    Files.writeString(sheet, "no,date in,type,s/n\n1,01/02/2020,sd48,A-1\n2,13/04/2020,sd48,A-2\n");
    assertTrue(ok("bring", sheet.toString()).contains("line 2: 2020-02-01"));
  }

  private JsonNode json(String command, String... rest) throws Exception {
    String[] arguments = new String[rest.length + 2];
    arguments[0] = command;
    System.arraycopy(rest, 0, arguments, 1, rest.length);
    arguments[rest.length + 1] = "--json";
    return new ObjectMapper().readTree(ok(arguments));
  }

  private String ok(String... arguments) {
    StringWriter out = new StringWriter();
    assertEquals(0, execute(out, arguments), err.toString());
    return out.toString();
  }

  private int run(String... arguments) {
    return execute(new StringWriter(), arguments);
  }

  private int execute(StringWriter out, String... arguments) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    String[] all = arguments;
    if (!arguments[0].equals("verify") && !String.join(" ", arguments).contains("--shop")) {
      all = Arrays.copyOf(arguments, arguments.length + 1);
      all[arguments.length] = "--shop=" + folder.resolve("shop");
    }
    return line.execute(all);
  }
}
