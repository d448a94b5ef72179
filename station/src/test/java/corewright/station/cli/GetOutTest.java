package corewright.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import corewright.station.work.Exporting;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * What a shop takes out of its record: found units, an export, a backup and the shop back from it.
 */
class GetOutTest {
  private static final Path CAPTURE =
      Path.of(
          System.getProperty("corewright.home"),
          "fixtures",
          "captures",
          "ilim_low_avg",
          "capture.csv.gz");

  @TempDir private Path folder;
  private Path shop = Path.of("");
  private final StringWriter err = new StringWriter();
  private String tag = "";

  @BeforeEach
  void oneUnitWithARunAndAPhotograph() throws Exception {
    shop = folder.resolve("shop");
    tag =
        json("receive", "--family=ref48", "--serial=R-77", "--customer=Orrel").get("tag").asText();
    json("measure", CAPTURE.toString(), "--tag", tag);
    Path photo = Files.writeString(folder.resolve("label.jpg"), "picture");
    json("attach", tag, photo.toString());
  }

  @Test
  void anExportHasEveryFileWithItsHashAndWhoIsForgottenMayBeInTheRest() throws Exception {
    Path out = folder.resolve("out");
    JsonNode made = json("export", "--out", out.toString());
    List<String> lines = Files.readAllLines(out.resolve(Exporting.HASHES));
    assertEquals(made.get("files").asInt(), lines.size());
    for (String line : lines) {
      byte[] bytes = Files.readAllBytes(out.resolve(line.substring(66)));
      assertEquals(line.substring(0, 64), hash(bytes), line);
    }
    assertTrue(lines.stream().anyMatch(l -> l.contains("  captures/")), lines.toString());
    assertTrue(lines.stream().anyMatch(l -> l.contains("  files/")), lines.toString());
    assertTrue(lines.stream().anyMatch(l -> l.matches(".*  documents/.*[.]pdf")), "" + lines);
    assertEquals(0, made.get("missing").size());
    assertEquals(1, run("export", "--out", out.toString(), "--shop=" + shop));
    assertEquals(1, run("export", "--out", out + "2", "--customer=Nobody", "--shop=" + shop));
    assertFalse(Files.exists(Path.of(out + "2")));
    assertEquals(0, json("export", "--out", out + "3", "--customer=Orrel").get("missing").size());
    JsonNode left = json("forget", "Orrel", "--reason=asked");
    assertTrue(left.at("/documents/0").asText().endsWith(".pdf"), left.toString());
    assertEquals( // sha256sum of the seven bytes
        "files/2cea274d0bedc39ec4ab6ba9e59ec889e3ed6fb56a1cf088a64d9b383378dc97",
        left.at("/files/0").asText());
  }

  /** What somebody attached goes through the same sieve, and both say so. */
  @Test
  void anExportLeavesOutVehiclesAlsoInAttachedTextAndNamesWhere() throws Exception {
    String vehicle = "1M8GDM9AXKP042788"; // by which check digits are taught
    Path log = Files.writeString(folder.resolve("log.csv"), "no. " + vehicle + "\nt;V\n0;12\n");
    json("attach", tag, log.toString());
    String file = "files/" + hash(Files.readAllBytes(log));
    Path out = folder.resolve("out");
    JsonNode made = json("export", "--out", out.toString());
    assertEquals(1, made.get("leftOut").size(), made.toString());
    assertTrue(Files.readString(out.resolve(file)).startsWith("no. (vehicle number left out)\nt;"));
    String said = Files.readString(out.resolve(Exporting.LEFT_OUT));
    assertTrue(said.contains("[vehicle-left-out]") && said.contains(file), said);
    json("export", "--out", out + "2", "--with-vehicles");
    assertEquals(Files.readString(log), Files.readString(Path.of(out + "2", file)));
  }

  private static String hash(byte[] bytes) throws Exception {
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  @Test
  void aBackupMadeWhileOthersWriteComesBackWhole() throws Exception {
    List<String> own = List.of("shop.json", "sign.svg", "benches/b.json", "templates/letter.txt");
    for (String name : own) { // without them a restored shop has other papers, and no calibration
      Files.createDirectories(shop.resolve(name).resolveSibling(""));
      Files.writeString(
          shop.resolve(name), "{\"name\":\"Orrel\",\"address\":\"Here\",\"logo\":\"sign.svg\"}");
    }
    AtomicBoolean done = new AtomicBoolean();
    AtomicInteger written = new AtomicInteger();
    Thread writer =
        new Thread(
            () -> {
              while (!done.get()) {
                run("safe", tag, "--volts=1", "--shop=" + shop);
                written.incrementAndGet();
              }
            });
    writer.start();
    Path file = folder.resolve("backup.zip");
    JsonNode made;
    try {
      while (written.get() < 2) {
        Thread.onSpinWait();
      }
      made = json("backup", file.toString());
    } finally {
      done.set(true);
      writer.join();
    }
    Path back = folder.resolve("back");
    String head = made.at("/heads/0").asText();
    JsonNode restored = json("restore", file.toString(), "--to", back.toString(), "--head", head);
    assertEquals(made.get("events"), restored.get("events"));
    assertTrue(restored.get("events").asLong() >= 7, restored.toString());
    assertFalse(Files.exists(back.resolve("keys")), "a backup has no key in it");
    for (String name : own) {
      assertEquals(-1, Files.mismatch(shop.resolve(name), back.resolve(name)), name);
    }
    Path original = shop;
    shop = back;
    assertEquals("FAIL", json("show", tag).at("/runs/0/verdict").asText());
    assertEquals(0, json("export", "--out", folder + "/x").get("missing").size());
    shop = original;
    assertEquals(1, run("backup", file.toString(), "--shop=" + shop), "never written over");
  }

  @Test
  void aDamagedBackupIsRefusedAndLeavesNoShop() throws Exception {
    Path file = folder.resolve("backup.zip");
    JsonNode made = json("backup", file.toString());
    byte[] bytes = Files.readAllBytes(file);
    for (int at : new int[] {bytes.length / 3, bytes.length / 2, bytes.length - 30}) {
      byte[] damaged = bytes.clone();
      damaged[at] ^= 0x10;
      Path other = Files.write(folder.resolve("damaged-" + at + ".zip"), damaged);
      assertEquals(1, run("restore", other.toString(), "--to", folder + "/none"), "byte " + at);
      assertFalse(Files.exists(folder.resolve("none")));
    }
    String later = made.at("/heads/0").asText().replaceFirst(":[0-9]+:", ":99:");
    err.getBuffer().setLength(0);
    assertEquals(1, run("restore", file.toString(), "--to", folder + "/none", "--head", later));
    assertTrue(err.toString().contains("cut off"), err.toString());
    Path half = folder.resolve("none.unfinished");
    assertFalse(Files.exists(half), "what was half made is gone");
    Files.createDirectories(half.resolve("captures"));
    Files.writeString(half.resolve("captures/another-shop.cap"), "left by an attempt that died");
    json("restore", file.toString(), "--to", folder + "/none");
    assertFalse(Files.exists(folder.resolve("none/captures/another-shop.cap")));
  }

  @Test
  void aSlipInATagIsPointedOutAndNothingElseIsShown() throws Exception {
    String slip = tag.substring(0, 6) + "9" + tag.substring(7);
    assertEquals(1, run("show", slip, "--shop=" + shop));
    assertTrue(err.toString().contains("One slip away are: " + tag), err.toString());
    assertEquals("tag, mistyped", json("find", slip).at("/0/why").asText());
    assertEquals(tag, json("find", "--stage=pending").at("/0/tag").asText());
    assertEquals(0, json("siblings", tag).size());
    json("confirm", tag, "output capacitors", "--predicted", "output capacitors");
    JsonNode figures = json("figures");
    assertEquals(tag, figures.at("/confirmedFaults/0/tags/0").asText());
    assertEquals(1, figures.at("/confirmedAsPredicted/0/n").asInt());
    assertTrue(figures.at("/weibull/refused").asText().contains("there are 0"), figures.toString());
    assertEquals(0, run("figures", "--shop=" + shop));
  }

  private JsonNode json(String... arguments) throws Exception {
    StringWriter out = new StringWriter();
    List<String> all = new ArrayList<>(List.of(arguments));
    all.add("--json");
    if (!arguments[0].equals("restore")) {
      all.add("--shop=" + shop);
    }
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    assertEquals(0, line.execute(all.toArray(String[]::new)), () -> all + ": " + err);
    return new ObjectMapper().readTree(out.toString());
  }

  private int run(String... arguments) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(new StringWriter()));
    line.setErr(new PrintWriter(err));
    return line.execute(arguments);
  }
}
