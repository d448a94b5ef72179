package corewright.station.work;

import corewright.bench.record.HandReading;
import corewright.measures.Measurement;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import java.util.List;
import java.util.Set;

/**
 * What somebody read elsewhere, as it was typed, becomes a reading: once for the command line and
 * the screens. U is the expanded uncertainty, k = 2.
 */
public final class HandEntry {
  /** A value is shown in the largest unit of which it is at least this share. */
  private static final double SHARE = 0.1;

  /** Nobody's name for an instrument is longer. */
  private static final int MOST_CHARACTERS = 80;

  private HandEntry() {}

  /**
   * A unit as instruments show it.
   *
   * @param factor how many of the quantity's own unit it is
   */
  public record Scale(String symbol, double factor) {}

  /**
   * The steps that somebody may enter on a bench, in the order of the profile.
   *
   * @param left the steps that the bench leaves out, by id
   */
  public static List<Step> steps(Profile profile, Set<String> left) {
    return possible(profile).stream().filter(s -> left.contains(s.id())).toList();
  }

  /** The steps that no bench does, and those that only some do. */
  public static List<Step> possible(Profile profile) {
    return profile.steps().stream().filter(s -> s.byHand().isPresent()).toList();
  }

  /** What a person reads of a step. */
  public static Quantity quantity(Step step) {
    return step.byHand().orElseThrow();
  }

  /** The units in which instruments show such a quantity, the largest first. */
  public static List<Scale> scales(Unit unit) {
    String symbol = unit.symbol();
    return switch (unit) {
      case ONE -> List.of(new Scale("", 1));
      case OHM ->
          List.of(
              new Scale("G" + symbol, 1e9),
              new Scale("M" + symbol, 1e6),
              new Scale("k" + symbol, 1e3),
              new Scale(symbol, 1));
      case AMPERE ->
          List.of(
              new Scale(symbol, 1), new Scale("m" + symbol, 1e-3), new Scale("µ" + symbol, 1e-6));
      case VOLT -> List.of(new Scale(symbol, 1), new Scale("m" + symbol, 1e-3));
      default -> List.of(new Scale(symbol, 1));
    };
  }

  /** The unit in which a value reads best; of zero the quantity's own. */
  public static Scale suiting(double value, Unit unit) {
    return scales(unit).stream()
        .filter(s -> Math.abs(value) >= SHARE * s.factor())
        .findFirst()
        .orElse(new Scale(unit == Unit.ONE ? "" : unit.symbol(), 1));
  }

  /**
   * One entry.
   *
   * @param value with a decimal point or comma, in {@code symbol}
   * @param expanded U in the same unit; of a count it may be left empty
   * @param symbol one of {@link #scales}; empty: the quantity's own unit
   * @throws Refused saying what is wrong with which entry
   */
  public static HandReading of(
      Step step, String value, String expanded, String symbol, String instrument, String by) {
    Quantity quantity = quantity(step);
    boolean count = quantity.unit() == Unit.ONE;
    double factor = factor(step, symbol);
    double read = number(step, "the value", value) * factor;
    double half = count && expanded.isBlank() ? 0 : number(step, "± U", expanded) * factor;
    if (count && (half != 0 || read < 0 || read != Math.rint(read))) {
      throw refuse(
          step, "it is counted, a whole number from 0", "Count again; a count has no ± U.");
    }
    if (!count && !(half > 0)) {
      throw refuse(
          step,
          "± U is 0, and no instrument reads so well",
          "Take it from the instrument's sheet, k = 2: at least one step of its last digit.");
    }
    if (quantity.unit() == Unit.OHM && read < 0) {
      throw refuse(step, "it is less than 0 Ω", "Look at the instrument again.");
    }
    if (instrument.isBlank() || instrument.strip().length() > MOST_CHARACTERS) {
      throw refuse(
          step,
          "what it was read with is missing or too long",
          "Name the instrument by its own number, at most " + MOST_CHARACTERS + " characters.");
    }
    return new HandReading(
        new Measurement(read, half / 2, quantity.unit()), by, instrument.strip());
  }

  private static double factor(Step step, String symbol) {
    Unit unit = quantity(step).unit();
    return scales(unit).stream()
        .filter(s -> s.symbol().equals(symbol) || (symbol.isEmpty() && s.factor() == 1))
        .findFirst()
        .orElseThrow(
            () ->
                refuse(
                    step,
                    "it is not read in " + symbol,
                    "Choose one of "
                        + String.join(", ", scales(unit).stream().map(Scale::symbol).toList())
                        + "."))
        .factor();
  }

  private static double number(Step step, String what, String text) {
    if (text.isBlank()) {
      throw refuse(step, what + " is missing", "Type it, or leave the whole step empty.");
    }
    try {
      double number = Double.parseDouble(text.strip().replace('−', '-').replace(',', '.'));
      if (Double.isFinite(number)) {
        return number;
      }
    } catch (NumberFormatException none) {
      // told below
    }
    throw refuse(step, what + " '" + text.strip() + "' is no number", "Type digits, as 1.25.");
  }

  private static Refused refuse(Step step, String what, String remedy) {
    return new Refused(quantity(step).title() + ": " + what, remedy);
  }
}
