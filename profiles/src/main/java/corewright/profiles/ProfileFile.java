package corewright.profiles;

import corewright.files.Origin;
import corewright.files.Section;
import corewright.measures.Quantity;
import java.util.Arrays;
import java.util.Optional;

/** A profile out of its JSON, which has been held against schema and rules before. */
final class ProfileFile {
  private ProfileFile() {}

  static Profile profile(Section file, Family family, Origin origin) {
    Section temperature = file.at("temperature");
    return new Profile(
        file.text("id"),
        file.whole("revision"),
        family.id(),
        file.text("title"),
        Profile.Purpose.valueOf(FamilyFile.constant(file.text("purpose"))),
        file.number("sampleRate_Hz"),
        file.optional("settle_s"),
        file.optional("guard_s"),
        file.each("feeds").stream().map(f -> feed(f, family)).toList(),
        file.flag("supplyDrops", false),
        file.number("provingLoad_A"),
        file.each("steps").stream().map(ProfileFile::step).toList(),
        file.each("limits").stream().map(ProfileFile::limit).toList(),
        temperature.number("nominal_C"),
        temperature.number("tolerance_K"),
        origin);
  }

  private static SupplyFeed feed(Section feed, Family family) {
    return new SupplyFeed(
        feed.text("name"), feed.has("good_V") ? FamilyFile.zones(feed) : family.zones());
  }

  /** A step that needs no level or time has none: 0. */
  private static Step step(Section step) {
    Step.Kind kind = Step.Kind.valueOf(FamilyFile.constant(step.text("kind")));
    return new Step(
        step.text("id"),
        kind,
        step.text("title"),
        step.number("input_V", 0),
        step.number("inputLimit_A", 0),
        step.number("load_A", 0),
        step.number("hold_s", 0),
        step.flag("judged", kind == Step.Kind.HOLD),
        new Step.Detail(
            step.optional("sampleRate_Hz"),
            step.number("to_V", 0),
            step.number("ramp_VperS", 0),
            step.each("levels").stream().map(ProfileFile::level).toList(),
            step.has("repeats") ? step.whole("repeats") : 1,
            step.has("quantity")
                ? Optional.of(Quantity.of(step.text("quantity")))
                : Optional.empty(),
            step.flag("needed", true),
            step.has("pulse_A") ? Optional.of(pulses(step)) : Optional.empty(),
            step.number("rest_s", 0)));
  }

  private static Step.Pulses pulses(Section step) {
    return new Step.Pulses(
        step.number("pulse_A"),
        step.number("width_s"),
        step.number("rate_Hz"),
        Arrays.stream(SlowPulses.values())
            .filter(rate -> step.has(rate.word()))
            .map(rate -> slower(rate, step.at(rate.word())))
            .toList());
  }

  private static Step.Slower slower(SlowPulses rate, Section keys) {
    return new Step.Slower(rate, keys.number("rate_Hz"), keys.number("hold_s"));
  }

  private static Step.Level level(Section level) {
    return new Step.Level(
        level.number("input_V"),
        level.number("hold_s"),
        level.flag("judged", true),
        level.has("swing_Vpp")
            ? Optional.of(new Step.Swing(level.number("swing_Vpp"), level.number("swing_Hz")))
            : Optional.empty());
  }

  private static Limit limit(Section limit) {
    return new Limit(
        limit.text("id"),
        Quantity.of(limit.text("quantity")),
        Limit.Side.valueOf(FamilyFile.constant(limit.text("side"))),
        limit.number("pass"),
        limit.number("fail"),
        limit.number("from_A"),
        limit.number("to_A", Double.POSITIVE_INFINITY),
        limit.number("fromHold_s", 0),
        limit.has("edge") ? Optional.of(edge(limit.at("edge"))) : Optional.empty(),
        limit.flag("headline", false),
        limit.text("why"));
  }

  private static Limit.Edge edge(Section edge) {
    return new Limit.Edge(edge.number("from_A"), edge.number("to_A"), edge.number("least_A"));
  }
}
