package corewright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptFilesTest {
  @TempDir private Path folder;
  private final AtomicInteger made = new AtomicInteger();
  private final KeptFiles<String> kept = new KeptFiles<>();
  private final Function<JsonFile, String> limit =
      file -> {
        made.incrementAndGet();
        return file.root().path("limit_V").asText();
      };

  @Test
  void whatHasNotChangedIsMadeOnce() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "{\"limit_V\": 46}");
    assertEquals("46", kept.of(file, limit));
    assertEquals("46", kept.of(file, limit));
    assertEquals(1, made.get());
  }

  @Test
  void anEditThatKeepsSizeAndTimeIsSeen() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "{\"limit_V\": 46}");
    FileTime time = Files.getLastModifiedTime(file);
    assertEquals("46", kept.of(file, limit));
    Files.writeString(file, "{\"limit_V\": 45}");
    Files.setLastModifiedTime(file, time);
    assertEquals("45", kept.of(file, limit));
  }

  @Test
  void whatIsBrokenOrGoneIsRefusedAndWhatIsMendedIsRead() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "{\"limit_V\": 46}");
    kept.of(file, limit);
    Files.writeString(file, "{\"limit_V\": }");
    assertThrows(BadFile.class, () -> kept.of(file, limit));
    Files.delete(file);
    assertThrows(BadFile.class, () -> kept.of(file, limit));
    Files.writeString(file, "{\"limit_V\": 47}");
    assertEquals("47", kept.of(file, limit));
  }

  @Test
  void whatItWasReadBesideMayMakeItBeReadAgain() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "{\"limit_V\": 46}");
    kept.of(file, limit);
    assertEquals("46", kept.of(file, was -> false, limit));
    assertEquals(2, made.get());
  }
}
