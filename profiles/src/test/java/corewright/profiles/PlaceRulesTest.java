package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import corewright.files.BadFile;
import corewright.files.Mistake;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A catalogue of a shop's own, whose files were renamed. */
class PlaceRulesTest {
  @TempDir private Path folder;
  private Path families;

  @BeforeEach
  void copyOneFamily() throws IOException {
    Path room = Path.of(System.getProperty("corewright.home"), "profiles");
    families = folder.resolve("families");
    copy(room.resolve("schemas"), folder.resolve("schemas"));
    copy(room.resolve("families/sd48"), families.resolve("sd48"));
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }

  @Test
  void theCopyIsGood() {
    assertEquals("sd48-arrival", Catalogue.in(families).profile("sd48-arrival").id());
  }

  @Test
  void aFamilyIsCalledAsItsFolder() throws IOException {
    Files.move(families.resolve("sd48"), families.resolve("sd49"));
    assertEquals(
        List.of("'sd48' is not the name of its folder, 'sd49'"),
        messages(() -> Catalogue.in(families).family("sd49")));
  }

  @Test
  void aProfileIsCalledAsItsFile() throws IOException {
    Path sd48 = families.resolve("sd48");
    Files.move(sd48.resolve("sd48-ship.json"), sd48.resolve("sd48-sent.json"));
    assertEquals(
        List.of("'sd48-ship' is not the name of its file, 'sd48-sent'"),
        messages(() -> Catalogue.in(families).profile("sd48-sent")));
  }

  @Test
  void theDefaultProfileLiesBesideItsFamily() throws IOException {
    Files.delete(families.resolve("sd48/sd48-arrival.json"));
    assertEquals(
        List.of("there is no sd48-arrival.json beside this file"),
        messages(() -> Catalogue.in(families).family("sd48")));
  }

  private static List<String> messages(Runnable read) {
    return assertThrows(BadFile.class, read::run).mistakes().stream()
        .map(Mistake::message)
        .toList();
  }
}
