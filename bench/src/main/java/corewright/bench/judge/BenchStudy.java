package corewright.bench.judge;

import corewright.bench.record.RunRecord;
import corewright.measures.Measurement;
import corewright.measures.Unit;
import corewright.measures.control.GaugeStudy;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How much of what a bench reads is the measuring, and how much the units: several people ran the
 * same units several times. Pure.
 *
 * @param profile what they were run with
 * @param people who ran every unit at least twice
 * @param tags the units
 * @param times how often each ran each, the last runs where it was more
 * @param readings one for each headline reading that every one of those runs has
 * @param missing what is still to be run, each a sentence; then there are no readings
 */
public record BenchStudy(
    String profile,
    List<String> people,
    List<String> tags,
    int times,
    List<OfReading> readings,
    List<String> missing) {
  private static final int LEAST = 2;

  public BenchStudy {
    people = List.copyOf(people);
    tags = List.copyOf(tags);
    readings = List.copyOf(readings);
    missing = List.copyOf(missing);
  }

  /** The study of one headline reading; its numbers are in {@code unit}. */
  public record OfReading(String id, String title, Unit unit, GaugeStudy study) {}

  /**
   * From the runs of one profile on one bench.
   *
   * @param runs by tag of the unit, the oldest first
   */
  public static BenchStudy of(String profile, Map<String, List<RunRecord>> runs) {
    List<String> tags = runs.keySet().stream().sorted().toList();
    Map<String, Map<String, List<RunRecord>>> byPerson = new TreeMap<>();
    runs.forEach(
        (tag, all) ->
            all.forEach(
                run ->
                    byPerson
                        .computeIfAbsent(run.operator(), who -> new TreeMap<>())
                        .computeIfAbsent(tag, t -> new ArrayList<>())
                        .add(run)));
    List<String> people =
        byPerson.entrySet().stream()
            .filter(p -> tags.stream().allMatch(t -> cell(p.getValue(), t).size() >= LEAST))
            .map(Map.Entry::getKey)
            .toList();
    List<String> missing = missing(tags, people, byPerson);
    if (!missing.isEmpty()) {
      return new BenchStudy(profile, people, tags, 0, List.of(), missing);
    }
    Map<String, Map<String, List<RunRecord>>> complete = new LinkedHashMap<>();
    people.forEach(p -> complete.put(p, byPerson.getOrDefault(p, Map.of())));
    int times =
        complete.values().stream()
            .flatMap(units -> tags.stream().map(t -> cell(units, t).size()))
            .min(Integer::compare)
            .orElse(0);
    return new BenchStudy(profile, people, tags, times, readings(complete, tags, times), List.of());
  }

  private static List<String> missing(
      List<String> tags, List<String> people, Map<String, Map<String, List<RunRecord>>> byPerson) {
    List<String> missing = new ArrayList<>();
    if (tags.size() < LEAST) {
      missing.add(
          "Two reference units of one profile are needed, and there is " + tags.size() + ".");
    }
    if (people.size() < LEAST) {
      missing.add("Two people must have run every unit twice, each under their own name.");
      byPerson.forEach(
          (who, units) ->
              tags.stream()
                  .filter(t -> cell(units, t).size() < LEAST)
                  .forEach(
                      t ->
                          missing.add(
                              who + " has run " + t + " " + times(cell(units, t).size()) + ".")));
    }
    return missing;
  }

  private static String times(int n) {
    return n == 0 ? "never" : n == 1 ? "once" : n + " times";
  }

  private static List<RunRecord> cell(Map<String, List<RunRecord>> units, String tag) {
    return Optional.ofNullable(units.get(tag)).orElse(List.of());
  }

  private static List<OfReading> readings(
      Map<String, Map<String, List<RunRecord>>> byPerson, List<String> tags, int times) {
    Map<String, Headline> first = new LinkedHashMap<>();
    byPerson.values().stream()
        .flatMap(units -> units.values().stream())
        .flatMap(List::stream)
        .flatMap(run -> headlines(run).stream())
        .forEach(h -> first.putIfAbsent(h.id(), h));
    List<OfReading> found = new ArrayList<>();
    for (Headline headline : first.values()) {
      double[][][] values = new double[byPerson.size()][times][tags.size()];
      boolean whole = true;
      int p = 0;
      for (Map<String, List<RunRecord>> units : byPerson.values()) {
        for (int t = 0; t < tags.size(); t++) {
          List<RunRecord> all = cell(units, tags.get(t));
          for (int k = 0; k < times; k++) {
            Optional<Measurement> read = read(all.get(all.size() - times + k), headline.id());
            whole &= read.isPresent();
            values[p][k][t] = read.map(Measurement::value).orElse(0.0);
          }
        }
        p++;
      }
      if (whole) {
        found.add(
            new OfReading(
                headline.id(),
                headline.title(),
                headline.reading().unit(),
                GaugeStudy.byVariance(values)));
      }
    }
    return found;
  }

  private static Optional<Measurement> read(RunRecord run, String id) {
    return headlines(run).stream()
        .filter(h -> h.id().equals(id))
        .findFirst()
        .map(Headline::reading);
  }

  private static List<Headline> headlines(RunRecord run) {
    return run.measured().map(Headline::of).orElse(List.of());
  }
}
