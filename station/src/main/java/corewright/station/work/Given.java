package corewright.station.work;

import corewright.bench.identify.Identifier;
import corewright.profiles.Cue;
import java.nio.file.Path;
import java.util.Optional;

/**
 * One answer as a person gives it.
 *
 * @param answer one of the possible answers; {@code not seen} where a number was read, which the
 *     key turns into an answer
 * @param read exactly what was read, as {@code 1431} or {@code 437 g}; empty where the answer says
 *     it all
 * @param photo a photograph that shows it
 */
public record Given(String answer, String read, Optional<Path> photo) {

  /** What was chosen or, for a cue that is a number or a date, what was read. */
  public static Given of(Optional<Cue> cue, String said, Optional<Path> photo) {
    boolean read =
        cue.isPresent()
            && cue.get().scale().isPresent()
            && !cue.get().answers().contains(said)
            && !said.equals(Identifier.NOT_SEEN);
    return read ? new Given(Identifier.NOT_SEEN, said, photo) : new Given(said, "", photo);
  }

  /** What was read where that is known, else the answer. */
  public String words() {
    return read.isEmpty() ? answer : read;
  }
}
