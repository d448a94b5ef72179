package corewright.bench.identify;

import corewright.bench.record.CueAnswer;
import corewright.bench.record.Identification;
import corewright.profiles.Cue;
import corewright.profiles.Family;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An identified unit run through another revision of its family's key.
 *
 * @param before what the record says; empty where it was never identified
 * @param now what the key says
 * @param dropped answers that this key does not know any more, each as {@code bosses: 7}
 */
public record Rekey(Optional<Identification> before, Identification now, List<String> dropped) {

  public Rekey {
    dropped = List.copyOf(dropped);
  }

  /** Weighs the answers of the record again. What the key does not know is as if not seen. */
  public static Rekey of(
      Family family,
      Optional<Identification> before,
      List<CueAnswer> answers,
      Map<String, Double> priors) {
    List<CueAnswer> known = new ArrayList<>();
    List<String> dropped = new ArrayList<>();
    for (CueAnswer answer : answers) {
      Optional<Cue> cue =
          family.cues().stream().filter(c -> c.id().equals(answer.cue())).findFirst();
      boolean read = cue.isPresent() && cue.get().scale().isPresent() && !answer.read().isEmpty();
      if (cue.isEmpty()
          || read
          || answer.answer().equals(Identifier.NOT_SEEN)
          || cue.get().answers().contains(answer.answer())) {
        known.add(answer);
      } else {
        dropped.add(answer.cue() + ": " + answer.answer());
      }
    }
    return new Rekey(before, Identifier.identify(family, known, priors), dropped);
  }

  /** Whether the key now says another build than the record. */
  public boolean variantChanges() {
    return !before.map(Identification::variant).orElse("").equals(now.variant());
  }

  /** Whether the record was made with this very revision of the key. */
  public boolean sameKey() {
    return before.map(b -> b.keyRevision() == now.keyRevision()).orElse(false);
  }
}
