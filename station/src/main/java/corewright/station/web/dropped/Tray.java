package corewright.station.web.dropped;

import corewright.bench.run.Clock;
import corewright.station.work.Refused;
import corewright.station.work.Trees;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Files that were dropped: each in a folder of its own under a name that nobody can guess, for the
 * session that brought it alone, and gone after an hour.
 */
final class Tray {
  static final long MOST_BYTES = 200_000_000;
  private static final Duration KEPT = Duration.ofHours(1);
  private static final int MOST_FILES = 20;
  private static final int NAME_LENGTH = 80;
  private static final String PREFIX = "drop-";

  private final Map<String, Item> items = new ConcurrentHashMap<>();
  private final SecureRandom random = new SecureRandom();
  private final Supplier<Path> root;
  private final Clock clock;
  private final long mostBytes;

  Tray(Supplier<Path> root, Clock clock) {
    this(root, clock, MOST_BYTES);
  }

  Tray(Supplier<Path> root, Clock clock, long mostBytes) {
    this.root = root;
    this.clock = clock;
    this.mostBytes = mostBytes;
  }

  /**
   * One file.
   *
   * @param session whose it is
   * @param name as it was called, made harmless
   */
  record Item(String id, String session, Path file, String name, Instant since) {
    Path folder() {
      return file.resolveSibling("");
    }
  }

  /**
   * Takes a file in.
   *
   * @throws Refused if it is too large or empty; nothing of it stays then
   */
  Item take(String session, String name, InputStream in) {
    sweep();
    if (items.size() >= MOST_FILES) {
      throw new Refused("Too many files lie here already", "Try again in some minutes.");
    }
    byte[] bytes = new byte[16];
    random.nextBytes(bytes);
    String id = HexFormat.of().formatHex(bytes);
    Path folder = root.get().resolve(PREFIX + id);
    Path file = folder.resolve(harmless(name));
    try {
      Files.createDirectories(folder);
      copy(in, file);
    } catch (IOException broken) {
      Trees.remove(folder);
      throw new Refused("The file did not come over whole", "Drop it once more.");
    } catch (Refused refused) {
      Trees.remove(folder);
      throw refused;
    }
    Item item = new Item(id, session, file, harmless(name), clock.wall());
    items.put(id, item);
    return item;
  }

  private void copy(InputStream in, Path file) throws IOException {
    long total = 0;
    byte[] chunk = new byte[1 << 16];
    try (OutputStream out = Files.newOutputStream(file)) {
      for (int n = in.read(chunk); n > 0; n = in.read(chunk)) {
        total += n;
        if (total > mostBytes) {
          throw tooLarge();
        }
        out.write(chunk, 0, n);
      }
    }
    if (total == 0) {
      throw new Refused("The file is empty", "Ask for it again.");
    }
  }

  static Refused tooLarge() {
    return new Refused(
        "The file is larger than 200 MB", "Cut it to the stretch that matters, or pack it (.gz).");
  }

  /**
   * A file of this session.
   *
   * @throws Refused if there is none, be it another's
   */
  Item of(String id, String session) {
    sweep();
    return Optional.ofNullable(items.get(id))
        .filter(item -> item.session().equals(session))
        .orElseThrow(
            () ->
                new Refused(
                    "This file is not here any more",
                    "Dropped files go after an hour: drop it again."));
  }

  /** Takes away what has lain here for an hour. */
  void sweep() {
    Instant now = clock.wall();
    items
        .values()
        .removeIf(
            item -> {
              boolean over = now.isAfter(item.since().plus(KEPT));
              if (over) {
                Trees.remove(item.folder());
              }
              return over;
            });
  }

  /** What an earlier program left. */
  void clear() {
    if (!Files.isDirectory(root.get())) {
      return;
    }
    try (Stream<Path> all = Files.list(root.get())) {
      all.filter(f -> String.valueOf(f.getFileName()).startsWith(PREFIX)).forEach(Trees::remove);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + root.get(), e);
    }
  }

  /** A name that is one name on every system: letters, digits, dot, dash, blank. */
  static String harmless(String name) {
    String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
    String plain = last.replaceAll("[^\\p{L}\\p{N}._ -]", "_").replaceAll("^[. ]+|[. ]+$", "");
    String cut =
        plain.length() > NAME_LENGTH ? plain.substring(plain.length() - NAME_LENGTH) : plain;
    return cut.isEmpty() ? "file" : cut;
  }
}
