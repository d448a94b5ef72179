package corewright.files;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What was made of files, kept by their names. Each time a file is asked for its bytes are read and
 * compared, which is quick; only other bytes are parsed and checked anew. Size and time would not
 * do: an edit within the same tick of the file system's clock may keep both. A file with mistakes
 * is never kept. For any thread, if {@code T} is.
 */
public final class KeptFiles<T> {
  private final Map<Path, Kept<T>> kept = new ConcurrentHashMap<>();

  @SuppressWarnings("ArrayRecordComponent") // compared by what is in it, below, and not as a record
  private record Kept<T>(byte[] bytes, T made) {}

  /**
   * What a file says now.
   *
   * @throws BadFile if it cannot be read, is no JSON, or {@code make} says so
   */
  public T of(Path file, Function<JsonFile, T> make) {
    return of(file, there -> true, make);
  }

  /**
   * What a file says now, beside what else it was read with.
   *
   * @param still whether what was made of these bytes would be made of them again
   * @throws BadFile if it cannot be read, is no JSON, or {@code make} says so
   */
  public T of(Path file, Predicate<T> still, Function<JsonFile, T> make) {
    byte[] bytes = TextFile.bytes(file);
    Kept<T> before = kept.get(file);
    if (before != null && Arrays.equals(before.bytes(), bytes) && still.test(before.made())) {
      return before.made();
    }
    T made = make.apply(JsonFile.of(TextFile.text(file, bytes)));
    kept.put(file, new Kept<>(bytes, made));
    return made;
  }
}
