package corewright.reports.chart;

import corewright.bench.record.Qualifier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.measures.Capture;
import corewright.measures.FeedReadings;
import corewright.measures.Figures;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.profiles.Family;
import corewright.profiles.InputZones;
import corewright.profiles.Profile;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts a run's record and its curves together into what the picture shows. */
final class Scenes {
  /** Columns of the picture: a little finer than print at 150 dots per inch. */
  private static final int COLUMNS = 900;

  private final Evidence evidence;
  private final Words words;

  Scenes(Evidence evidence, Locale locale) {
    this.evidence = evidence;
    this.words = Words.of(Picture.class, locale);
  }

  /** The whole of one run; empty where its curves were not kept. */
  Optional<Scene> whole(RunRecord run) {
    return evidence
        .capture(run)
        .filter(capture -> capture.size() > 0)
        .map(capture -> scene(run, capture));
  }

  private Scene scene(RunRecord run, Capture capture) {
    Span time = new Span(0, capture.size() / capture.sampleRate_Hz());
    Optional<Profile> profile = evidence.profile(run);
    Optional<Family> family = evidence.family(run);
    boolean silent = run.judgement().verdict().filter(v -> v == Verdict.VOID).isPresent();
    return new Scene(
        time,
        Trace.of(capture.output(), capture.sampleRate_Hz(), capture.gaps(), 0, time.to(), COLUMNS),
        Optional.empty(),
        capture.feeds().stream()
            .map(
                feed ->
                    Trace.of(
                        feed.voltage(),
                        capture.sampleRate_Hz(),
                        capture.gaps(),
                        0,
                        time.to(),
                        COLUMNS))
            .toList(),
        capture
            .load()
            .map(
                load ->
                    Trace.of(load, capture.sampleRate_Hz(), capture.gaps(), 0, time.to(), COLUMNS)),
        zones(profile, family),
        family.map(Family::output_V),
        Headlines.judged(run),
        Headlines.of(run, words),
        silent ? lowest(run, capture) : Optional.empty(),
        silent,
        run.source() == Source.EMULATED);
  }

  private static Optional<InputZones> zones(Optional<Profile> profile, Optional<Family> family) {
    return profile
        .filter(p -> !p.feeds().isEmpty())
        .map(p -> p.feeds().get(0).zones())
        .or(() -> family.map(Family::zones));
  }

  /** Where the input was lowest, if it is the input that voids the run. */
  private Optional<Scene.Point> lowest(RunRecord run, Capture capture) {
    if (run.judgement().qualifier().filter(q -> q == Qualifier.VOID).isEmpty()) {
      return Optional.empty();
    }
    return run.measured().map(MeasuredRun::holds).stream()
        .flatMap(List::stream)
        .flatMap(hold -> hold.feeds().stream().map(feed -> new Low(hold, feed)))
        .filter(low -> low.feed.lowestMedian().measurement().isPresent())
        .min(Comparator.comparingDouble(Low::value_V))
        .map(low -> point(low, capture));
  }

  private Scene.Point point(Low low, Capture capture) {
    Measurement lowest = low.feed.lowestMedian().measurement().orElseThrow();
    double at_s = low.time_s(capture);
    String said = words.get("at", Figures.withU(lowest), Figures.number(at_s, 2));
    return new Scene.Point(at_s, lowest.value(), Words.tied(said));
  }

  private record Low(MeasuredHold hold, FeedReadings feed) {
    double value_V() {
      return feed.lowestMedian().measurement().orElseThrow().value();
    }

    /** When the feed was lowest within the hold, from the samples. */
    double time_s(Capture capture) {
      double rate = capture.sampleRate_Hz();
      int from = (int) Math.max(0, Math.round(hold.start_s() * rate));
      int to = (int) Math.min(capture.size(), Math.round(hold.end_s() * rate));
      int lowest = from;
      for (Capture.Feed candidate : capture.feeds()) {
        if (candidate.name().equals(feed.name())) {
          for (int i = from; i < to; i++) {
            if (candidate.voltage().codeAt(i) < candidate.voltage().codeAt(lowest)) {
              lowest = i;
            }
          }
        }
      }
      return lowest / rate;
    }
  }
}
