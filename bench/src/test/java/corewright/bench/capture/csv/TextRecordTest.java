package corewright.bench.capture.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.files.BadFile;
import corewright.files.Mistake;
import corewright.measures.Capture;
import corewright.measures.Unit;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextRecordTest {
  @TempDir private Path folder;

  private static final String PLAIN =
      """
      time_s,input_V,output_V,load_A
      0.0000,12.0020,47.9688,-0.0085
      0.0001,11.9922,47.9688,-0.0073
      0.0002,12.0000,48.0000,0.0000
      """;

  @Test
  void thePlainHeaderIsReadWithoutAGuess() throws IOException {
    TextRecord.Read read = read(PLAIN);
    Capture capture = read.capture();
    assertEquals(List.of(), read.guesses());
    assertEquals(10_000, capture.sampleRate_Hz());
    assertEquals(3, capture.size());
    assertEquals("input", capture.feeds().get(0).name());
    assertEquals(12.002, capture.feeds().get(0).voltage().at(0));
    assertEquals(-0.0073, capture.load().orElseThrow().at(1));
    assertEquals(Unit.AMPERE, capture.load().orElseThrow().unit());
  }

  @Test
  void codesAreTheDecimalsThatWereWritten() throws IOException {
    Capture capture = read(PLAIN).capture();
    assertEquals(1e-4, capture.output().lsb());
    assertEquals(479_688, capture.output().codeAt(0));
  }

  @Test
  void moreDecimalsLaterRescaleWhatWasRead() throws IOException {
    Capture capture =
        read("time_s,input_V,output_V,load_A\n0,12,48,0\n1,12.5,48.25,0\n2,11,47.125,1.5\n")
            .capture();
    assertEquals(1e-3, capture.output().lsb());
    assertEquals(List.of(48_000, 48_250, 47_125), codes(capture));
    assertEquals(11.0, capture.feeds().get(0).voltage().at(2));
  }

  @Test
  void printedDoublesKeepAsManyDigitsAs31BitsHold() throws IOException {
    Capture capture =
        read("time_s,input_V,output_V,load_A\n0,12,48.123456789012345,0\n"
                + "1,12,-4.9999999999,0\n2,12,4799.7,0\n")
            .capture();
    assertEquals(48.123456789, capture.output().at(0), capture.output().lsb());
    assertEquals(4799.7, capture.output().at(2), 1e-9);
    assertTrue(capture.output().lsb() <= 1e-5, "lsb " + capture.output().lsb());
  }

  @Test
  void commaDecimalsSemicolonsUnitsInBracketsAndSeveralFeeds() throws IOException {
    TextRecord.Read read =
        read(
            "Zeit (ms);Supply A [mV];Supply B [V];Vout [V];Iload [mA];Note\n"
                + "0;12000;24,1;47,97;500;1\n0,1;11990;24,2;47,96;501;2\n");
    Capture capture = read.capture();
    assertEquals(10_000, capture.sampleRate_Hz());
    assertEquals(
        List.of("Supply A", "Supply B"), capture.feeds().stream().map(Capture.Feed::name).toList());
    assertEquals(11.99, capture.feeds().get(0).voltage().at(1));
    assertEquals(24.2, capture.feeds().get(1).voltage().at(1), 1e-12);
    assertEquals(0.501, capture.load().orElseThrow().at(1));
    String guesses = String.join("\n", read.guesses());
    assertTrue(guesses.contains("'Iload [mA]', is read as load in mA."), guesses);
    assertTrue(guesses.contains("decimal comma"), guesses);
    assertTrue(guesses.contains("'Note', is not used"), guesses);
  }

  @Test
  void aPreambleAndARowOfUnitsStandAboveTheValues() throws IOException {
    Capture capture =
        read("Logger,7\nStarted,today\n\nTime,Input,Output,Load\ns,V,mV,A\n"
                + "0.0E+00,1.2E+01,4.8E+04,5.0E-01\n1.0E-03,1.2E+01,4.79E+04,5.0E-01\n")
            .capture();
    assertEquals(1000, capture.sampleRate_Hz());
    assertEquals(47.9, capture.output().at(1), 1e-12);
    assertEquals(0.5, capture.load().orElseThrow().at(0));
  }

  @Test
  void compressedIsReadWhateverTheNameIs() throws IOException {
    Path file = folder.resolve("record.bin");
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(file))) {
      out.write(PLAIN.replace("\n", "\r\n").getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    assertEquals(3, TextRecord.read(file).capture().size());
  }

  @Test
  void wholeMissingSamplesAreGaps() throws IOException {
    StringBuilder text = new StringBuilder("time_s,input_V,output_V,load_A\n");
    for (int i = 0; i < 40; i++) {
      if (i < 20 || i > 22) {
        text.append(String.format(java.util.Locale.ROOT, "%.4f,12,48.%02d,0%n", i * 1e-4, i));
      }
    }
    TextRecord.Read read = read(text.toString());
    assertEquals(40, read.capture().size());
    assertEquals(List.of(new Capture.Gap(20, 3)), read.capture().gaps());
    assertEquals(48.19, read.capture().output().at(22), 1e-12, "the last value is held");
    assertEquals(48.23, read.capture().output().at(23), 1e-12);
    assertTrue(read.guesses().toString().contains("3 samples are missing"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0,12,48,0~1,12,x,0~2,1,1,1 | 3 | column 3 (output_V) | found no number",
        "0,12,48,0~1,12,,0~2,1,1,1 | 3 | column 3 (output_V) | found nothing",
        "0,12,48,0~1,12,48~2,1,1,1 | 3 | column 4 (load_A) | ends before it",
        "0,12,48,0~1,12,48,0,7~2,1,1,1 | 3 | column 5 | more fields",
        "0,12,48,0~1,12,48,0~1,12,48,0 | 4 | column 1 (time_s) | does not rise",
        "0.0,12,48,0~1.0,12,48,0~2.4,12,48,0 | 4 | column 1 (time_s) | steps by 1.4",
        "0,12,48,0~1,12,4.8.1,0 | 3 | column 3 (output_V) | found no number",
        "0,12,nan,0~1,12,48,0 | 1 | header | headings",
      })
  void whatIsWrongIsNamedWithLineAndColumn(String rows, int line, String where, String what)
      throws IOException {
    String text = "time_s,input_V,output_V,load_A\n" + rows.replace("~", "\n") + "\n";
    if (rows.contains("nan")) {
      // The first line of values is no line of numbers, so it is taken for a heading.
      BadFile bad = assertThrows(BadFile.class, () -> read(text));
      assertTrue(bad.getMessage().contains("record.csv"), bad.getMessage());
      return;
    }
    Mistake mistake = assertThrows(BadFile.class, () -> read(text)).mistakes().get(0);
    assertEquals(line, mistake.line());
    assertEquals(where, mistake.where());
    assertTrue(mistake.message().contains(what), mistake.message());
    assertTrue(!mistake.suggestion().isBlank());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0,12,48,0 | begins with numbers",
        "time_s,input_V,load_A~0,1,2~1,1,2 | no column is called output",
        "time_s,output_V,load_A~0,1,2~1,1,2 | no column is called input",
        "input_V,output_V,load_A~0,1,2~1,1,2 | no column is called time",
        "time_s,input_V,output_V,Vout (V)~0,1,2,3~1,1,2,3 | several columns could be the output",
        "nothing here | no line of numbers",
      })
  void aHeaderThatLeavesADoubtIsRefused(String text, String what) throws IOException {
    BadFile bad = assertThrows(BadFile.class, () -> read(text.replace("~", "\n")));
    assertTrue(bad.getMessage().contains(what), bad.getMessage());
    assertTrue(bad.getMessage().contains("time_s,input_V,output_V,load_A"), "the remedy");
  }

  /** What other programs write: the same three samples, whatever stands around them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"Time\",\"Input voltage (V)\",\"Output voltage (V)\",\"Load current (A)\" |"
            + " \"%s\",\"%s\",\"%s\",\"%s\"",
        "TIME_S,INPUT_V,OUTPUT_V,LOAD_A | %s,%s,%s,%s",
        "Zeit (s),Eingang (V),Ausgang (V),Last (A) | %s,%s,%s,%s",
        "Temps (s),Entrée (V),Sortie (V),Charge (A) | %s,%s,%s,%s",
        "time [S],vin [v],vout [v],iload [a] | %s,%s,%s,%s",
        "time_s,inputVoltage_V,outputVoltage_V,loadCurrent_A | %s,%s,%s,%s",
        "Time,V in,V out,I load | %s,%s,%s,%s",
        "s,Supply (Volts),Boost (Volts),Load (Amps) | %s,%s,%s,%s",
      })
  void theSameSamplesUnderOtherHeadings(String heading, String row) throws IOException {
    String head = heading.startsWith("s,") ? "t_" + heading : heading;
    String text =
        head
            + "\n"
            + row.formatted("0.000", "12.0", "48.0", "0.0")
            + "\n"
            + row.formatted("0.001", "12.1", "47.9", "0.5")
            + "\n";
    for (String ends : List.of("\n", "\r\n", "\r")) {
      for (Charset charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16)) {
        String which = charset + (ends.equals("\n") ? " LF" : ends.equals("\r") ? " CR" : " CRLF");
        Capture capture = read(text.replace("\n", ends).getBytes(charset)).capture();
        assertEquals(1000, capture.sampleRate_Hz(), which);
        assertEquals(12.1, capture.feeds().get(0).voltage().at(1), 1e-12, which);
        assertEquals(47.9, capture.output().at(1), 1e-12, which);
        assertEquals(0.5, capture.load().orElseThrow().at(1), 1e-12, which);
      }
    }
  }

  @Test
  void aMarkOfOrderOfBytesIsNoPartOfTheHeader() throws IOException {
    assertEquals(3, read("\uFEFF" + PLAIN).capture().size());
    assertEquals(List.of(), read("\uFEFF" + PLAIN).guesses());
  }

  @Test
  void theInputCurrentOfOurOwnCapturesIsRead() throws IOException {
    Capture capture =
        read("time_s,input_V,output_V,load_A,inputCurrent_A\n0,12,48,0,0.1\n1,12,48,0,0.2\n")
            .capture();
    assertEquals(0.2, capture.inputCurrent().orElseThrow().at(1));
  }

  /** Quoted, a comma may part thousands or decimals: nobody says which, so it is no number. */
  @Test
  void aCommaInsideQuotesIsRefused() throws IOException {
    String text = PLAIN + "0.0003,\"12,000\",48,0\n";
    Mistake mistake = assertThrows(BadFile.class, () -> read(text)).mistakes().get(0);
    assertEquals(5, mistake.line());
    assertEquals("column 2 (input_V)", mistake.where());
  }

  /** A lower-case letter after a space is a name, not an ampere. */
  @Test
  void noUnitIsSeenWhereAnotherThingMayBeMeant() {
    assertEquals(Optional.empty(), ColumnName.of("phase a").unit());
    assertEquals(Optional.of(Unit.AMPERE), ColumnName.of("phase A").unit());
    assertEquals(Optional.of(Unit.AMPERE), ColumnName.of("load_a").unit());
  }

  @Test
  void whatIsNoRecordAtAllSaysSo() throws IOException {
    Path none = folder.resolve("none.csv");
    assertEquals(none + ": there is no such file. Check the name and the folder", refused(none));
    assertEquals(folder + ": this is a folder. Name the file itself", refused(folder));
    Path empty = Files.createFile(folder.resolve("leer.csv"));
    assertEquals(empty + ": the file is empty. Ask for the recording again", refused(empty));
  }

  private static String refused(Path file) {
    BadFile bad = assertThrows(BadFile.class, () -> TextRecord.read(file));
    return bad.mistakes().get(0).toString();
  }

  private static List<Integer> codes(Capture capture) {
    return java.util.stream.IntStream.range(0, capture.size())
        .mapToObj(capture.output()::codeAt)
        .toList();
  }

  private TextRecord.Read read(String text) throws IOException {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  private TextRecord.Read read(byte[] bytes) throws IOException {
    Path file = folder.resolve("record.csv");
    Files.write(file, bytes);
    return TextRecord.read(file);
  }
}
