package corewright.profiles;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import corewright.files.BadFile;
import corewright.files.Mistake;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** A good file with one thing changed, as a person might. */
final class Edited {
  private Edited() {}

  /** Writes {@code good} with {@code was} replaced, and gives back what reading it finds. */
  static List<Mistake> mistakes(
      Path folder, String good, String was, String now, Consumer<Path> read) {
    assertTrue(good.contains(was), "the good file has no " + was);
    return assertThrows(BadFile.class, () -> read.accept(file(folder, good.replace(was, now))))
        .mistakes();
  }

  static Path file(Path folder, String text) {
    try {
      return Files.writeString(folder.resolve("edited.json"), text);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
