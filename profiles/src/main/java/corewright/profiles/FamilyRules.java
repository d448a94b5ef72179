package corewright.profiles;

import static corewright.files.Section.shown;

import corewright.files.Mistake;
import corewright.files.Section;
import corewright.profiles.Rules.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * What a family must keep beyond its schema: levels in their order, charge that can be taken out.
 */
final class FamilyRules {
  private static final List<Rule<Section>> ALL =
      List.of(
          FamilyRules::zonesInOrder,
          FamilyRules::abortOutsideOperation,
          FamilyRules::supplyTripAboveNeed,
          FamilyRules::resistorBearsTheCharge,
          FamilyRules::decayFits,
          KeyRules::names,
          KeyRules::priors,
          KeyRules::expectations,
          KeyRules::kits,
          KeyRules::scales,
          KeyRules::dates,
          KeyRules::checklist,
          KeyRules::context);

  private FamilyRules() {}

  static List<Mistake> check(Section family) {
    List<Mistake> found = new ArrayList<>();
    ALL.forEach(rule -> rule.check(family, found::add));
    return found;
  }

  private static void zonesInOrder(Section family, Consumer<Mistake> found) {
    Section zones = family.at("inputZones");
    Section converter = family.at("converter");
    double good = zones.number("good_V");
    double tolerated = zones.number("tolerated_V");
    double nominal = converter.number("input_V");
    if (tolerated > good) {
      found.accept(
          zones.mistake(
              "tolerated_V",
              shown(tolerated) + " V is above good_V, " + shown(good) + " V",
              "Write at most " + shown(good)));
    }
    if (good > nominal) {
      found.accept(
          zones.mistake(
              "good_V",
              shown(good) + " V is above the nominal input, " + shown(nominal) + " V",
              "Write at most " + shown(nominal)));
    }
    if (nominal > converter.number("inputCeiling_V")) {
      found.accept(
          converter.mistake(
              "inputCeiling_V",
              "it is below the nominal input, " + shown(nominal) + " V",
              "Write at least " + shown(nominal)));
    }
  }

  private static void abortOutsideOperation(Section family, Consumer<Mistake> found) {
    Section abort = family.at("abort");
    double output = family.at("converter").number("output_V");
    double over = abort.number("outputOver_V");
    double under = abort.number("outputUnder_V");
    if (over <= output * 1.03) {
      found.accept(
          abort.mistake(
              "outputOver_V",
              shown(over) + " V is inside the operating range of a " + shown(output) + " V output",
              "Write well above " + shown(output * 1.03) + " V, below what the parts bear"));
    }
    if (under >= output * 0.95) {
      found.accept(
          abort.mistake(
              "outputUnder_V",
              shown(under) + " V is inside the operating range of a " + shown(output) + " V output",
              "Write well below " + shown(output * 0.95) + " V"));
    }
  }

  private static void supplyTripAboveNeed(Section family, Consumer<Mistake> found) {
    Section converter = family.at("converter");
    double need_W = converter.number("output_V") * converter.number("ratedLoad_A");
    double good = family.at("inputZones").number("good_V");
    double need_A = Math.ceil(need_W / Fed.WORST_EFFICIENCY / good * 10) / 10;
    Section abort = family.at("abort");
    if (abort.number("inputOver_A") < need_A) {
      found.accept(
          abort.mistake(
              "inputOver_A",
              shown(abort.number("inputOver_A"))
                  + " A is what a good unit may draw at full load and "
                  + shown(good)
                  + " V",
              "Write at least " + shown(need_A)));
    }
  }

  /** At the first instant the whole output stands across the resistor: P = V²/R. */
  private static void resistorBearsTheCharge(Section family, Consumer<Mistake> found) {
    Section discharge = family.at("discharge");
    double output = family.at("converter").number("output_V");
    double taken_W = output * output / discharge.number("resistor_ohm");
    if (taken_W > discharge.number("power_W")) {
      found.accept(
          discharge.mistake(
              "resistor_ohm",
              String.format(Locale.ROOT, "it takes %.1f W at %s V", taken_W, shown(output)),
              "Use a larger resistance, or state a power_W that bears it"));
    }
  }

  /** t = R·C·ln(V₀/V); the same again is allowed for tolerance. */
  private static void decayFits(Section family, Consumer<Mistake> found) {
    Section discharge = family.at("discharge");
    Section converter = family.at("converter");
    double tau_s = discharge.number("resistor_ohm") * converter.number("capacitance_F");
    double needed_s = tau_s * Math.log(converter.number("output_V") / discharge.number("safe_V"));
    if (discharge.number("within_s") < needed_s) {
      found.accept(
          discharge.mistake(
              "within_s",
              String.format(
                  Locale.ROOT, "a healthy unit takes %.2f s through this resistor", needed_s),
              "Write about twice that"));
    }
  }
}
