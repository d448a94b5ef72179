package corewright.bench.record;

import java.time.Instant;
import java.util.Objects;

/**
 * What a person saw.
 *
 * @param cue id of the cue or checklist item
 * @param answer one of its answers
 * @param who who looked
 * @param read exactly what was read, where that is more than the answer, as {@code 1431} or {@code
 *     437 g}; may be empty
 * @param photo hash of the photograph that shows it, SHA-256 in lower-case hex; empty where there
 *     is none
 */
public record CueAnswer(
    String cue, String answer, String who, Instant when, String read, String photo) {

  public CueAnswer {
    read = Objects.requireNonNullElse(read, ""); // records older than these two have neither
    photo = Objects.requireNonNullElse(photo, "");
  }

  /** Seen, and nothing more. */
  public CueAnswer(String cue, String answer, String who, Instant when) {
    this(cue, answer, who, when, "", "");
  }

  /** What was read where that is known, else the answer. */
  public String words() {
    return read.isEmpty() ? answer : read;
  }
}
