package corewright.station.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.bench.life.Role;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.run.Clock;
import corewright.profiles.Catalogue;
import corewright.reports.ledger.LedgerFault;
import corewright.station.demo.SampleCore;
import corewright.station.web.HostileShop;
import corewright.station.web.place.Bench;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A limit is never lowered without a revision and a signer: common practice, no source. ISO/IEC
 * 17025:2017, 8.3.2 asks the same of any document that results rest on.
 */
class SignedLimitsTest {
  private static final String OWNER = "H. Oduya";
  private static final String RECEIVER = "I. Marsh"; // of the sample's answers
  private static final String PROFILE = "profile sd48-arrival";

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void filesOfItsOwn() throws IOException {
    Path home = Path.of(System.getProperty("corewright.home"), "profiles");
    copy(home.resolve("families"), folder.resolve("families"));
    copy(home.resolve("schemas"), folder.resolve("schemas"));
    file = folder.resolve("families/sd48/sd48-arrival.json");
  }

  /** What a release delivers stands in its list, and the list is of this release. */
  @Test
  void everyFileOfThisReleaseStandsInTheListOfWhatWasDelivered() {
    Catalogue catalogue = Catalogue.ofHome();
    for (String id : catalogue.familyIds()) {
      var family = catalogue.family(id);
      delivered(new Delivered.Text(family.origin().sha256(), family.revision(), "family " + id));
      for (String name : catalogue.profileIds(id)) {
        var p = catalogue.profile(name);
        delivered(new Delivered.Text(p.origin().sha256(), p.revision(), "profile " + name));
      }
    }
  }

  private static void delivered(Delivered.Text text) {
    assertTrue(
        Delivered.texts().contains(text),
        () -> "add to station/work/delivered.txt, and keep the older lines: " + text.line());
  }

  @Test
  void aLoweredLimitCertifiesNothingUntilItsRevisionIsCountedUpAndSigned() throws IOException {
    try (Workshop shop = open()) {
      assertTrue(standing(shop).delivered(), "as delivered");
      assertEquals("", certificate(shop), "what was delivered certifies");
      assertTrue(paper(shop).contains("of " + PROFILE + " are as delivered"), paper(shop));

      edit("\"pass\": 46.5", "\"pass\": 45.5");
      assertTrue(!standing(shop).answeredFor(), "changed");
      String refused = certificate(shop);
      assertTrue(refused.startsWith("Nobody has signed the limits"), refused);
      assertTrue(refused.contains(PROFILE), refused);
      String sameRevision = message(() -> shop.limits().sign(PROFILE, "", OWNER));
      assertTrue(sameRevision.contains("Revision 2 of " + PROFILE), sameRevision);
      assertTrue(sameRevision.contains("was delivered with another text"), sameRevision);

      edit("\"revision\": 2", "\"revision\": 3");
      String seen = shop.catalogue().profile("sd48-arrival").origin().sha256();
      String other = message(() -> shop.limits().sign(PROFILE, "0".repeat(64), OWNER));
      assertTrue(other.contains("has changed since it was shown"), other);
      assertTrue(message(() -> shop.limits().sign(PROFILE, seen, "M. Reyes")).contains("may not"));
      assertEquals(
          OWNER, shop.limits().sign(PROFILE, seen, OWNER).standing().signed().orElseThrow().who());
      assertEquals("", certificate(shop), "signed");
      String says = "The limits of " + PROFILE + " were signed by " + OWNER + " on ";
      assertTrue(paper(shop).contains(says), paper(shop));
      assertTrue(shop.ledger().verify().whole());

      edit("\"pass\": 45.5", "\"pass\": 45.2");
      String again = message(() -> shop.limits().sign(PROFILE, "", OWNER));
      assertTrue(again.contains("Revision 3 of " + PROFILE + " is signed"), again);
      assertTrue(certificate(shop).contains(PROFILE), "a changed text is not the signed one");
    }
  }

  /** Software that changes limits silently with an update is what practitioners complain about. */
  @Test
  void afterTheShopsFirstSignatureAnUpdateCountsForNothingUntilItIsSigned() throws IOException {
    String delivered = Files.readString(file);
    try (Workshop shop = open()) {
      RunRecord before = run(shop);
      edit("\"revision\": 2", "\"revision\": 3");
      shop.limits().sign(PROFILE, "", OWNER);
      Files.writeString(file, delivered);
      assertTrue(!standing(shop).answeredFor(), "the shop has its own");
      assertEquals(List.of(), shop.limits().unsigned(before, "sd48"), "what was run before stays");
    }
  }

  private Workshop open() {
    Workshop shop =
        Workshop.open(
            Catalogue.in(folder.resolve("families")),
            folder.resolve("shop"),
            ShopFile.in(folder),
            "bench-1",
            Clock.system());
    char[] password = "seven red boats".toCharArray();
    shop.ledger().accounts().put(OWNER, Role.OWNER, password, OWNER);
    shop.ledger().accounts().put("M. Reyes", Role.TECHNICIAN, password, OWNER);
    shop.ledger().accounts().put(RECEIVER, Role.TECHNICIAN, password, OWNER);
    return shop;
  }

  private SignedLimits.Standing standing(Workshop shop) {
    return shop.limits().of(shop.catalogue().family("sd48")).stream()
        .filter(held -> held.what().equals(PROFILE))
        .findFirst()
        .orElseThrow()
        .standing();
  }

  /** Tests a unit on a bench, and says why it has no certificate; empty: it has one. */
  private String certificate(Workshop shop) throws IOException {
    String tag = run(shop).tag();
    Bench.passes(folder.resolve("shop"), tag, Source.BENCH);
    try {
      shop.publishing().write(Paperwork.CERTIFICATE, tag, OWNER);
      return "";
    } catch (Refused refused) {
      return String.valueOf(refused.getMessage());
    }
  }

  /** The certificate that was written last. */
  private static String paper(Workshop shop) throws IOException {
    Path file;
    try (Stream<Path> all = Files.list(shop.folders().documents())) {
      file =
          all.filter(f -> f.toString().endsWith("-certificate.pdf"))
              .max(Comparator.comparing(f -> f.toFile().lastModified()))
              .orElseThrow();
    }
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("[\\s\u00A0]+", " ");
    }
  }

  private RunRecord run(Workshop shop) throws IOException {
    String tag = SampleCore.receive(shop, "sd48");
    Path record = Files.writeString(folder.resolve("record.csv"), HostileShop.weak());
    return shop.importing()
        .take(
            new Importing.Request(
                tag,
                record,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OWNER),
            new RunIds("import", new Random()));
  }

  private static String message(Runnable deed) {
    RuntimeException refused = assertThrows(RuntimeException.class, deed::run);
    assertTrue(refused instanceof Refused || refused instanceof LedgerFault, refused.toString());
    return String.valueOf(refused.getMessage());
  }

  private void edit(String from, String to) throws IOException {
    String text = Files.readString(file);
    assertTrue(text.contains(from), text);
    Files.writeString(file, text.replace(from, to));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path source : all.toList()) {
        Files.copy(source, to.resolve(from.relativize(source).toString()));
      }
    }
  }
}
