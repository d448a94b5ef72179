package corewright.profiles;

import corewright.files.Origin;
import corewright.files.Section;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** A family out of its JSON, which has been held against schema and rules before. */
final class FamilyFile {
  private FamilyFile() {}

  static Family family(Section file, Origin origin) {
    Section converter = file.at("converter");
    return new Family(
        file.text("id"),
        file.whole("revision"),
        file.text("title"),
        converter.number("input_V"),
        converter.number("inputCeiling_V"),
        converter.number("output_V"),
        converter.number("ratedLoad_A"),
        converter.number("capacitance_F"),
        converter.number("esr_ohm"),
        converter.number("switching_Hz"),
        zones(file.at("inputZones")),
        abort(file.at("abort")),
        discharge(file.at("discharge")),
        dead(file.at("deadCheck")),
        file.text("defaultProfile"),
        file.flag("testOnly", false),
        file.each("variants").stream().map(FamilyFile::variant).toList(),
        file.each("cues").stream().map(FamilyFile::cue).toList(),
        file.each("checklist").stream().map(FamilyFile::check).toList(),
        economics(file.at("economics")),
        file.whole("outputs"),
        file.each("pins").stream()
            .map(p -> new Family.Pin(p.text("pin"), p.text("carries")))
            .toList(),
        origin);
  }

  static InputZones zones(Section zones) {
    return new InputZones(zones.number("good_V"), zones.number("tolerated_V"));
  }

  private static AbortLimits abort(Section abort) {
    return new AbortLimits(
        abort.number("outputOver_V"),
        abort.number("outputUnder_V"),
        abort.number("underHold_s"),
        abort.number("inputOver_A"),
        abort.number("inputOver_s"),
        abort.number("case_C"));
  }

  private static Discharge discharge(Section discharge) {
    return new Discharge(
        discharge.number("resistor_ohm"),
        discharge.number("power_W"),
        discharge.number("safe_V"),
        discharge.number("within_s"));
  }

  private static DeadLimits dead(Section dead) {
    return new DeadLimits(dead.number("input_ohm"), dead.number("output_ohm"));
  }

  private static Variant variant(Section variant) {
    Section expected = variant.at("expected");
    Map<String, List<String>> answers = new LinkedHashMap<>();
    expected.keys().forEach(cue -> answers.put(cue, expected.texts(cue)));
    return new Variant(
        variant.text("id"),
        variant.text("title"),
        Variant.Serviceable.valueOf(constant(variant.text("serviceable"))),
        variant.text("why"),
        variant.text("kit"),
        variant.number("prior"),
        answers,
        variant.has("mass") ? Optional.of(mass(variant.at("mass"))) : Optional.empty());
  }

  private static Variant.Mass mass(Section mass) {
    return new Variant.Mass(mass.number("expected_g"), mass.number("spread_g"));
  }

  private static Cue cue(Section cue) {
    return new Cue(
        cue.text("id"),
        cue.text("question"),
        cue.text("look"),
        Cue.TravelsWith.valueOf(constant(cue.text("travelsWith"))),
        cue.number("reliability"),
        cue.number("cost_s"),
        cue.texts("answers"),
        cue.has("scale") ? Optional.of(scale(cue.at("scale"))) : Optional.empty(),
        cue.optional("reliabilityOpened"));
  }

  private static Scale scale(Section scale) {
    return new Scale(
        scale.text("unit"),
        scale.each("bands").stream()
            .map(b -> new Scale.Band(b.text("answer"), b.number("from"), b.number("to")))
            .toList(),
        scale.texts("formats").stream().map(DateFormat::valueOf).toList());
  }

  private static CheckItem check(Section item) {
    Section askedIf = item.at("askedIf");
    Section grades = item.at("grades");
    Section signs = item.at("signs");
    return new CheckItem(
        item.text("id"),
        item.text("group"),
        item.text("question"),
        item.texts("answers"),
        item.texts("blocks"),
        item.text("meaning"),
        byKey(askedIf, askedIf::texts),
        byKey(grades, k -> Grade.valueOf(grades.text(k))),
        byKey(signs, k -> Sign.valueOf(constant(signs.text(k)))),
        item.flag("perPin", false));
  }

  private static <T> Map<String, T> byKey(Section section, Function<String, T> value) {
    Map<String, T> map = new LinkedHashMap<>();
    section.keys().forEach(key -> map.put(key, value.apply(key)));
    return map;
  }

  private static Economics economics(Section money) {
    return new Economics(
        money.text("currency"),
        money.number("sale"),
        money.number("exchange"),
        money.number("exchangeCost"),
        money.number("kit"),
        money.number("labour_h"),
        money.number("rate_perHour"),
        money.number("test"),
        money.number("warranty"),
        money.number("harvest"),
        money.number("yield"),
        money.number("evaluation"),
        money.number("freight"));
  }

  /** The constant that a word of a file stands for: {@code deadCheck} is {@code DEAD_CHECK}. */
  static String constant(String word) {
    return word.replaceAll("(?=[A-Z])", "_").toUpperCase(Locale.ROOT);
  }
}
