package corewright.station.work;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.fixtures.describe.BenchDescription;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.function.Consumer;

/** A bench's file with something new in it, its revision counted up; the earlier one beside it. */
public final class BenchRevision {
  private BenchRevision() {}

  /**
   * Writes it. What it rests on is in the record already.
   *
   * @param change what is put into the file's tree
   * @return where the file's earlier text is
   */
  public static Path write(Path file, BenchDescription bench, Consumer<ObjectNode> change) {
    Path old = file.resolveSibling(file.getFileName() + ".revision-" + bench.revision());
    ObjectMapper mapper = new ObjectMapper();
    try {
      ObjectNode tree = (ObjectNode) mapper.readTree(file.toFile());
      tree.put("revision", bench.revision() + 1);
      change.accept(tree);
      Files.copy(file, old, StandardCopyOption.REPLACE_EXISTING);
      Path next = file.resolveSibling(file.getFileName() + ".new");
      mapper.writerWithDefaultPrettyPrinter().writeValue(next.toFile(), tree);
      Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
      return old;
    } catch (IOException e) {
      throw new UncheckedIOException(
          "what was measured is in the record, but " + file + " cannot be written", e);
    }
  }
}
