package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.files.BadFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop edits its files while the program runs, as profiles/README.md says. */
class EditedCatalogueTest {
  private static final Path HOME = Path.of(System.getProperty("corewright.home"), "profiles");

  @TempDir private Path folder;
  private Path sd48;
  private Catalogue catalogue;

  @BeforeEach
  void copied() throws IOException {
    sd48 = Files.createDirectories(folder.resolve("families/sd48"));
    Files.createDirectories(folder.resolve("schemas"));
    for (String name :
        List.of(
            "schemas/family.schema.json",
            "schemas/profile.schema.json",
            "families/sd48/family.json",
            "families/sd48/sd48-arrival.json",
            "families/sd48/sd48-ship.json")) {
      Files.copy(HOME.resolve(name), folder.resolve(name));
    }
    catalogue = Catalogue.in(folder.resolve("families"));
  }

  @Test
  void whatNobodyEditedIsNotCheckedAgain() {
    assertSame(catalogue.family("sd48"), catalogue.family("sd48"));
    assertSame(catalogue.profile("sd48-ship"), catalogue.profile("sd48-ship"));
  }

  @Test
  void anEditCountsFromTheNextQuestionOn() throws IOException {
    assertEquals(46.5, headline());
    edit("sd48-ship.json", "\"pass\": 46.5", "\"pass\": 47.0");
    assertEquals(47.0, headline());
  }

  @Test
  void aProfileIsHeldToItsFamilyAsThatIsNow() throws IOException {
    catalogue.profile("sd48-ship");
    edit("family.json", "\"ratedLoad_A\": 2.0", "\"ratedLoad_A\": 1.0");
    BadFile told = assertThrows(BadFile.class, () -> catalogue.profile("sd48-ship"));
    assertTrue(told.mistakes().stream().anyMatch(m -> m.file().endsWith("sd48-ship.json")));
  }

  @Test
  void aFamilyWhoseFirstProfileIsGoneIsRefused() throws IOException {
    Path first = sd48.resolve(catalogue.family("sd48").defaultProfile() + ".json");
    Files.delete(first);
    assertThrows(BadFile.class, () -> catalogue.family("sd48"));
  }

  private double headline() {
    return catalogue.profile("sd48-ship").limits().stream()
        .filter(Limit::headline)
        .findFirst()
        .orElseThrow()
        .pass();
  }

  private void edit(String name, String was, String is) throws IOException {
    Path file = sd48.resolve(name);
    String text = Files.readString(file);
    assertTrue(text.contains(was), name + " has no " + was);
    Files.writeString(file, text.replaceFirst(was, is));
  }
}
