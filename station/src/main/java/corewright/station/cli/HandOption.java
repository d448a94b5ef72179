package corewright.station.cli;

import corewright.bench.record.HandReading;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.station.work.HandEntry;
import corewright.station.work.Refused;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What was read elsewhere, as {@code key-off=0.0012±0.0001,multimeter 4}: k = 2, unit of its step.
 */
final class HandOption {
  private static final Pattern FORM =
      Pattern.compile("([^=]+)=(-?[0-9.eE+-]+?)(?:±|\\+-)([0-9.]+(?:[eE]-?[0-9]+)?),(.+)");

  private HandOption() {}

  /**
   * By id of the step.
   *
   * @throws Refused saying which entry is wrong, and the form that is right
   */
  static Map<String, HandReading> read(List<String> entries, Profile profile, String by) {
    Map<String, HandReading> readings = new LinkedHashMap<>();
    for (String entry : entries) {
      Matcher form = FORM.matcher(entry);
      if (!form.matches() || form.group(4).isBlank()) {
        throw new Refused(
            "--hand " + entry + " cannot be read",
            "Write STEP=VALUE±U,INSTRUMENT, as key-off=0.0012±0.0001,multimeter 4.");
      }
      Step step = step(form.group(1), profile);
      HandReading reading = HandEntry.of(step, form.group(2), form.group(3), "", form.group(4), by);
      if (readings.put(step.id(), reading) != null) {
        throw new Refused("--hand names '" + step.id() + "' twice", "Keep one of them.");
      }
    }
    return readings;
  }

  private static Step step(String id, Profile profile) {
    List<Step> open = HandEntry.possible(profile);
    Optional<Step> named = open.stream().filter(s -> s.id().equals(id.strip())).findFirst();
    return named.orElseThrow(
        () ->
            new Refused(
                profile.id() + " has no step '" + id.strip() + "' that is entered by hand",
                open.isEmpty()
                    ? "Choose another profile, or leave --hand out."
                    : "Its steps by hand: "
                        + String.join(", ", open.stream().map(Step::id).toList())
                        + "."));
  }
}
