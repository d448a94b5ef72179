package corewright.station.work;

import corewright.fixtures.describe.BenchDescription;
import corewright.fixtures.describe.Descriptions;
import corewright.fixtures.describe.Dialect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Dialects by id: beside the bench's file that names them, then among the home's, then those inside
 * the program. So an instrument that nobody has described yet needs a file and no build.
 */
public final class Dialects implements Function<String, Dialect> {
  private final List<Path> folders;

  /**
   * @param bench the bench's file
   */
  public Dialects(Home home, Path bench) {
    this.folders = List.of(bench.toAbsolutePath().resolveSibling(""), home.dialects());
  }

  /**
   * The dialect of that name.
   *
   * @throws corewright.files.BadFile if there is none, or it has mistakes
   */
  @Override
  public Dialect apply(String id) {
    return find(id).orElseGet(() -> Descriptions.shippedDialect(id));
  }

  /**
   * The dialect of each role of a bench; none where nothing is spoken, as to a load set by hand.
   */
  public Function<String, Optional<Dialect>> of(BenchDescription bench) {
    return role ->
        bench
            .instrument(role)
            .filter(i -> !i.isByHand() && !i.dialect().isEmpty())
            .map(i -> apply(i.dialect()));
  }

  /** The dialect of that name in a file; empty if there is none. */
  public Optional<Dialect> find(String id) {
    return folders.stream()
        .map(folder -> folder.resolve(id + ".json"))
        .filter(Files::isRegularFile)
        .findFirst()
        .map(Descriptions::dialect);
  }
}
