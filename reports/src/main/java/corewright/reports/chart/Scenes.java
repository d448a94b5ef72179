package corewright.reports.chart;

import corewright.bench.record.Qualifier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Source;
import corewright.bench.record.Verdict;
import corewright.measures.Capture;
import corewright.measures.FeedReadings;
import corewright.measures.MeasuredHold;
import corewright.measures.MeasuredRun;
import corewright.measures.Measurement;
import corewright.measures.Waveform;
import corewright.profiles.Family;
import corewright.profiles.InputZones;
import corewright.profiles.Profile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts a run's record and its curves together into what the picture shows. */
final class Scenes {
  /** Columns of the picture: a little finer than print at 150 dots per inch. */
  private static final int COLUMNS = 900;

  /** What is shown before and after a hold, as a part of it. */
  private static final double LEAD = 0.12;

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

  /**
   * The headline hold of one run with the same hold of others behind it, all counted from the load
   * edge that begins it; empty where one of them has no such hold or no curves.
   */
  Optional<Scene> overlay(RunRecord front, List<RunRecord> others) {
    Optional<MeasuredHold> hold = Headlines.hold(front);
    Optional<Capture> capture = evidence.capture(front);
    if (hold.isEmpty() || capture.isEmpty()) {
      return Optional.empty();
    }
    double edge_s = hold.get().start_s();
    double length_s = hold.get().end_s() - edge_s;
    Span around = new Span(-LEAD * length_s, length_s * (1 + LEAD));
    List<Trace> behind = new ArrayList<>();
    for (RunRecord other : others) {
      Optional<MeasuredHold> before = Headlines.hold(other);
      Optional<Capture> curves = evidence.capture(other);
      if (before.isEmpty() || curves.isEmpty()) {
        return Optional.empty();
      }
      behind.add(trace(curves.get(), curves.get().output(), around, before.get().start_s()));
    }
    return Optional.of(scene(front, capture.get(), around, edge_s).behind(behind));
  }

  private Scene scene(RunRecord run, Capture capture) {
    return scene(run, capture, new Span(0, capture.size() / capture.sampleRate_Hz()), 0);
  }

  /**
   * @param shown the time axis
   * @param zero_s where in the capture the axis has its zero, s
   */
  private Scene scene(RunRecord run, Capture capture, Span shown, double zero_s) {
    Optional<Profile> profile = evidence.profile(run);
    Optional<Family> family = evidence.family(run);
    boolean silent = run.judgement().verdict().filter(v -> v == Verdict.VOID).isPresent();
    return new Scene(
        shown,
        trace(capture, capture.output(), shown, zero_s),
        List.of(),
        capture.feeds().stream()
            .map(feed -> trace(capture, feed.voltage(), shown, zero_s))
            .toList(),
        capture.load().map(load -> trace(capture, load, shown, zero_s)),
        zones(profile, family),
        family.map(Family::output_V),
        within(shown, shifted(Headlines.judged(run), -zero_s)),
        Headlines.of(run, words).map(headline -> shifted(headline, shown, -zero_s)),
        silent ? lowest(run, capture) : Optional.empty(),
        silent,
        run.source() == Source.EMULATED);
  }

  private static Trace trace(Capture capture, Waveform wave, Span shown, double zero_s) {
    return Trace.of(
            wave,
            capture.sampleRate_Hz(),
            capture.gaps(),
            shown.from() + zero_s,
            shown.to() + zero_s,
            COLUMNS)
        .shifted(-zero_s);
  }

  private static Scene.Headline shifted(Scene.Headline h, Span shown, double by_s) {
    return new Scene.Headline(
        new Span(h.window().from() + by_s, h.window().to() + by_s),
        within(shown, shifted(h.floors(), by_s)),
        h.side(),
        h.limit_V(),
        h.limitWords(),
        h.mean_V(),
        h.reading(),
        h.margin());
  }

  private static List<Span> shifted(List<Span> spans, double by_s) {
    return spans.stream().map(s -> new Span(s.from() + by_s, s.to() + by_s)).toList();
  }

  private static List<Span> within(Span shown, List<Span> spans) {
    return spans.stream().filter(s -> s.from() >= shown.from() && s.to() <= shown.to()).toList();
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
    String said = words.get("at", words.numerals().withU(lowest), words.numerals().number(at_s, 2));
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
