package corewright.profiles;

import java.util.List;
import java.util.Optional;

/**
 * How a cue that is a number becomes one of its answers.
 *
 * @param unit what the number is in, as {@code g} or {@code Hz}
 * @param bands in rising order, not overlapping
 */
public record Scale(String unit, List<Band> bands) {

  public Scale {
    bands = List.copyOf(bands);
  }

  /**
   * Numbers that are one answer.
   *
   * @param from this number included
   * @param to this number not included
   */
  public record Band(String answer, double from, double to) {}

  /** The answer that a number stands for; empty where it is in no band. */
  public Optional<String> answer(double number) {
    return bands.stream()
        .filter(b -> number >= b.from && number < b.to)
        .map(Band::answer)
        .findFirst();
  }
}
