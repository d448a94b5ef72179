package corewright.profiles;

import java.util.List;
import java.util.Optional;

/**
 * How a cue that is a number becomes one of its answers.
 *
 * @param unit what the number is in, as {@code g} or {@code Hz}
 * @param bands in rising order, not overlapping
 * @param formats for a date: how it may be written; empty for any other number
 */
public record Scale(String unit, List<Band> bands, List<DateFormat> formats) {

  public Scale {
    bands = List.copyOf(bands);
    formats = List.copyOf(formats);
  }

  /** A number that is no date. */
  public Scale(String unit, List<Band> bands) {
    this(unit, bands, List.of());
  }

  /** Whether the number is a date of making, as year · 100 + week. */
  public boolean isDate() {
    return !formats.isEmpty();
  }

  /** The bands of these answers, in rising order. */
  public List<Band> bands(List<String> answers) {
    return bands.stream().filter(b -> answers.contains(b.answer())).toList();
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
