package corewright.bench.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.files.BadFile;
import corewright.files.Mistake;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A customer's log as bytes: what it is, what it is not, and how its lines end. */
class LogFileTest {
  private static final String TEXT = "Öltemp (°C);Zeit (s)\n−6;0,25\n";

  @TempDir private Path folder;

  private LogFile log(String name, byte[] bytes) {
    Path file = folder.resolve(name);
    try {
      Files.write(file, bytes);
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
    return LogFile.open(file);
  }

  private static List<String> lines(LogFile log) {
    return log.lines(
        lines -> {
          List<String> all = new ArrayList<>();
          lines.forEachRemaining(all::add);
          return all;
        });
  }

  @ParameterizedTest
  @CsvSource({
    "UTF-8,'',UTF-8",
    "UTF-8,EFBBBF,UTF-8 with byte order mark",
    "UTF-16LE,FFFE,UTF-16LE",
    "UTF-16BE,FEFF,UTF-16BE",
    "UTF-16LE,'',UTF-16LE without a byte order mark",
    "UTF-16BE,'',UTF-16BE without a byte order mark"
  })
  void everyEncodingGivesTheSameLines(String charset, String mark, String words) {
    byte[] text = TEXT.repeat(20).getBytes(Charset.forName(charset));
    byte[] begin = java.util.HexFormat.of().parseHex(mark);
    byte[] all = java.util.Arrays.copyOf(begin, begin.length + text.length);
    System.arraycopy(text, 0, all, begin.length, text.length);
    LogFile log = log("log.csv", all);
    assertEquals(words, log.encoding());
    assertEquals(TEXT.repeat(20).lines().toList(), lines(log));
  }

  @Test
  void whatIsNoUtf8IsWindows1252() {
    LogFile log = log("log.csv", "Öl (°C);Zeit\n".getBytes(Charset.forName("windows-1252")));
    assertEquals("Windows-1252, since it is no UTF-8", log.encoding());
    assertEquals(List.of("Öl (°C);Zeit"), lines(log));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void anEndOfLineIsOneHoweverItIsWritten(String end) {
    String text = String.join(end, List.of("a,b", "", "1,2", "3,4"));
    assertEquals(List.of("a,b", "", "1,2", "3,4"), lines(log("log.csv", bytes(text))));
    assertEquals(List.of("a,b", "", "1,2", "3,4"), lines(log("log.csv", bytes(text + end))));
  }

  @Test
  void linesAreTheSameWhereverTheBufferCutsThem() {
    List<String> written = new ArrayList<>();
    for (int i = 0; i < 20_000; i++) {
      written.add("x".repeat(i % 7) + i);
    }
    assertEquals(written, lines(log("log.csv", bytes(String.join("\r\n", written) + "\r\n"))));
  }

  /** SHA-256 of "abc": FIPS 180-4 as published by NIST, example of one block, from memory. */
  @Test
  void theHashIsOfTheBytesAsTheyCame() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        log("log.csv", bytes("abc")).sha256());
  }

  @Test
  void packedLogsAreUnpackedAndHashedAsTheyCame() throws IOException {
    byte[] text = bytes("a,b\n1,2\n");
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream gzip = new GZIPOutputStream(packed)) {
      gzip.write(text);
    }
    assertEquals(List.of("a,b", "1,2"), lines(log("log.csv.gz", packed.toByteArray())));
    assertEquals(List.of("a,b", "1,2"), lines(log("log.zip", zip("my log.csv"))));
    refused(zip("one.csv", "two.csv"), "there are 2 texts in this archive");
    refused(zip("[Content_Types].xml", "sheet.xml"), "workbook or document");
    refused(java.util.Arrays.copyOf(zip("a.csv"), 40), "it cannot be read");
  }

  private static byte[] zip(String... names) throws IOException {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(packed)) {
      for (String name : names) {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes("a,b\n1,2\n"));
        zip.closeEntry();
      }
    }
    return packed.toByteArray();
  }

  @Test
  void whatIsNoTextIsRefusedByWhatItIs() {
    refused(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10}, "a picture");
    refused(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0}, "a picture");
    refused(bytes("%PDF-1.7\n"), "a PDF document");
    refused(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0}, "an old workbook");
    refused(bytes("SQLite format 3\0"), "a database");
    refused(new byte[0], "the file is empty");
    byte[] binary = new byte[256];
    for (int i = 0; i < binary.length; i++) {
      binary[i] = (byte) (i % 32);
    }
    refused(binary, "a binary file");
  }

  @Test
  void aLineThatNoLogHasIsRefusedByItsNumber() {
    LogFile log = log("log.csv", bytes("a,b\n1,2\n" + "x".repeat((1 << 20) + 1) + "\n"));
    BadFile refused = assertThrows(BadFile.class, () -> lines(log));
    assertEquals(3, refused.mistakes().get(0).line());
  }

  @Test
  void aFileThatIsNotThereIsRefused() {
    BadFile noFile = assertThrows(BadFile.class, () -> LogFile.open(folder));
    assertEquals(
        folder + ": this is a folder. Name the file itself", noFile.mistakes().get(0).toString());
    Path none = folder.resolve("none.csv");
    BadFile refused = assertThrows(BadFile.class, () -> LogFile.open(none));
    assertTrue(refused.getMessage().contains("there is no such file"), refused.getMessage());
  }

  private void refused(byte[] bytes, String why) {
    BadFile refused = assertThrows(BadFile.class, () -> log("log.csv", bytes));
    Mistake mistake = refused.mistakes().get(0);
    assertTrue(refused.getMessage().contains(why), refused.getMessage());
    assertEquals(1, mistake.line());
    assertEquals("column 1", mistake.where());
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
