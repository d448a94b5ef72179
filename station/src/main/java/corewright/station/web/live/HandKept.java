package corewright.station.web.live;

import corewright.bench.record.Dossier;
import corewright.bench.record.HandReading;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.station.web.Drafts;
import corewright.station.work.HandEntry;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What people have read elsewhere, until a run takes it into the record: kept on disk by unit,
 * visit and profile, so that several people may each enter what they have read. A run that came to
 * a verdict uses up what was entered before it; after any other the same stands for the next
 * attempt.
 */
final class HandKept {
  private static final String NOBODY = "";

  private final Drafts drafts;

  HandKept(Drafts drafts) {
    this.drafts = drafts;
  }

  /**
   * What stands in the fields of one step.
   *
   * @param at when it was entered
   */
  record Entry(
      String value, String expanded, String unit, String instrument, String by, Instant at) {
    boolean says(Entry other) {
      return value.equals(other.value)
          && expanded.equals(other.expanded)
          && unit.equals(other.unit)
          && instrument.equals(other.instrument);
    }

    private List<String> fields() {
      return List.of(value, expanded, unit, instrument, by, at.toString());
    }

    private static Entry of(List<String> fields) {
      return new Entry(
          fields.get(0),
          fields.get(1),
          fields.get(2),
          fields.get(3),
          fields.get(4),
          Instant.parse(fields.get(5)));
    }
  }

  /** By id of the step; without what a run has used up. */
  Map<String, Entry> of(LiveBench bench, Dossier dossier, Profile profile) {
    Instant used =
        dossier.runs().stream()
            .filter(r -> r.profileId().equals(profile.id()) && concluded(r))
            .map(RunRecord::started)
            .max(Instant::compareTo)
            .orElse(Instant.MIN);
    Map<String, Entry> kept = new LinkedHashMap<>();
    drafts
        .of(NOBODY, name(bench, dossier, profile))
        .forEach((step, fields) -> kept.put(step, Entry.of(fields)));
    kept.values().removeIf(e -> e.at().isBefore(used));
    return kept;
  }

  /** As {@code 2 of 6 are read by hand.} */
  static String words(int entered, int all) {
    if (all == 0) {
      return "";
    }
    String left =
        entered == all
            ? ""
            : entered == 0
                ? " What nobody enters stands as not measured."
                : " The others stand as not measured.";
    return (entered == 0 ? "None" : entered == all ? "All" : String.valueOf(entered))
        + " of "
        + all
        + " steps by hand "
        + (entered == 1 ? "is" : "are")
        + " entered."
        + left;
  }

  private static boolean concluded(RunRecord run) {
    return run.end().kind() == RunEnd.Kind.COMPLETED
        && run.judgement().verdict().filter(v -> v != Verdict.INCOMPLETE).isPresent();
  }

  /** As the run takes them. */
  Map<String, HandReading> readings(LiveBench bench, Dossier dossier, Profile profile) {
    Map<String, Entry> kept = of(bench, dossier, profile);
    Map<String, HandReading> readings = new LinkedHashMap<>();
    for (Step step : bench.byHand(profile)) {
      Entry e = kept.get(step.id());
      if (e != null) {
        readings.put(
            step.id(),
            HandEntry.of(step, e.value(), e.expanded(), e.unit(), e.instrument(), e.by()));
      }
    }
    return readings;
  }

  void keep(LiveBench bench, Dossier dossier, Profile profile, Map<String, Entry> entries) {
    Map<String, List<String>> fields = new LinkedHashMap<>();
    entries.forEach((step, entry) -> fields.put(step, entry.fields()));
    drafts.keep(NOBODY, name(bench, dossier, profile), fields);
  }

  /** One unit on one visit, and one profile; what is practised is apart. */
  static String name(LiveBench bench, Dossier dossier, Profile profile) {
    return String.join(
        "-",
        bench.isForPractice() ? "practised" : "hand",
        dossier.core().tag(),
        String.valueOf(dossier.visit()),
        profile.id());
  }
}
