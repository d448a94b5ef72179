package corewright.station.web.live;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.record.RunEnd;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.measures.Figures;
import corewright.measures.Measurement;
import corewright.profiles.InputZones;
import corewright.profiles.Step;
import java.util.List;
import java.util.Optional;

/**
 * What stands beside the picture of a run, at most four times a second: words that need no sums.
 */
final class NowJson {
  private static final int SECONDS = 60;

  private NowJson() {}

  static ObjectNode of(LiveBench bench, LiveRun run) {
    ObjectNode now = JsonNodeFactory.instance.objectNode();
    plate(now.putObject("plate"), bench.plate());
    List<LiveRun.Begun> begun = run.begun();
    ArrayNode starts = now.putArray("starts");
    begun.forEach(b -> starts.add(rounded(b.at_s())));
    Optional<Step> step =
        begun.isEmpty()
            ? Optional.empty()
            : Optional.of(run.course().step(begun.get(begun.size() - 1).index()));
    step.ifPresent(s -> now.put("asks", StepWords.asks(s)));
    if (!run.asked().isEmpty()) {
      now.put("hand", run.asked());
    }
    now.put("watchers", watchers(bench.watchers().get()));
    now.put("guards", guards(run));
    run.stop().requested().ifPresent(why -> now.put("stopping", why));
    run.seen().ifPresent(seen -> figures(now, run, seen, step));
    ArrayNode room = now.putArray("room");
    Room.of(run)
        .forEach(r -> room.addObject().put("n", r.name()).put("s", r.share()).put("l", r.left()));
    run.ended().ifPresent(end -> ended(now, end));
    run.outcome()
        .filter(o -> !bench.isForPractice()) // there it is first asked
        .ifPresent(o -> judged(now, o.run()));
    if (!run.failure().isEmpty()) {
      now.put("failure", run.failure());
    }
    now.put("over", run.isOver());
    return now;
  }

  /** The word, its reason where the run's own end does not give it, and what it means if VOID. */
  private static void judged(ObjectNode now, RunRecord run) {
    Optional<Verdict> verdict = run.judgement().verdict();
    now.put("verdict", verdict.map(Enum::name).orElse(""));
    String reason = run.judgement().reasons().stream().findFirst().orElse("");
    boolean told = reason.isEmpty() || run.end().saw().contains(reason);
    if (!told && run.end().kind() == RunEnd.Kind.COMPLETED) {
      now.put("end", ""); // beside a verdict with its reason it says nothing
    }
    now.put(
        "why",
        (told ? "" : reason)
            + (verdict.filter(v -> v == Verdict.VOID).isPresent()
                ? " Nothing is said about the unit."
                : ""));
  }

  static void plate(ObjectNode to, Plate plate) {
    to.put("form", plate.form());
    to.put("word", plate.word());
    to.put("line", plate.line());
    to.put("volts", plate.volts());
  }

  private static void figures(ObjectNode now, LiveRun run, Seen seen, Optional<Step> step) {
    double left_s = Math.max(0, seen.total_s() - seen.at_s());
    now.put("left", clock(left_s));
    now.put("share", seen.total_s() > 0 ? rounded(seen.at_s() / seen.total_s()) : 0);
    ObjectNode mean = now.putObject("mean");
    if (seen.mean().isPresent()) {
      reading(mean, seen.mean().get());
      step.flatMap(run.course()::floor)
          .ifPresent(floor -> margin(mean, seen.mean().get(), floor.pass()));
    } else {
      mean.put("why", whyNoMean(run, step));
    }
    ObjectNode input = now.putObject("input");
    if (seen.lowest_V().isPresent()) {
      Measurement lowest = seen.lowest_V().get();
      reading(input, lowest);
      zone(input, lowest, run.course().zones());
    } else {
      input.put("why", "looked at while a hold is judged");
    }
  }

  private static String whyNoMean(LiveRun run, Optional<Step> step) {
    if (step.filter(Course::isJudged).isEmpty()) {
      return "nothing is judged in this step";
    }
    return run.course().doubt("output").isEmpty()
        ? "the output channel has no calibration, so no U"
        : "settling: judged from " + Figures.number(run.course().settle_s(), 2) + " s on";
  }

  private static void reading(ObjectNode to, Measurement m) {
    String[] parts = Figures.withU(m).split(" ", 2);
    to.put("v", parts[0]).put("u", parts.length > 1 ? parts[1] : "");
  }

  private static void margin(ObjectNode to, Measurement m, double floor) {
    double distance = m.value() - floor;
    to.put("margin", Figures.like(Math.abs(distance), m) + (distance < 0 ? " below" : " above"));
    to.put("limit", "the limit of " + Figures.like(floor, m));
  }

  private static void zone(ObjectNode to, Measurement lowest, InputZones zones) {
    boolean good = lowest.value() >= zones.good_V();
    boolean tolerated = lowest.value() >= zones.tolerated_V();
    to.put("zone", good ? "valid" : tolerated ? "tolerated" : "void");
    to.put(
        "edge",
        good
            ? Figures.like(zones.good_V(), lowest) + " or more"
            : tolerated
                ? "under " + Figures.like(zones.good_V(), lowest)
                : "under " + Figures.like(zones.tolerated_V(), lowest));
  }

  private static String guards(LiveRun run) {
    long holding = run.guards().stream().filter(g -> g.passed()).count();
    if (run.guards().isEmpty()) {
      return "The bench is being opened.";
    }
    return holding == run.guards().size()
        ? "All " + holding + " guards held at the start."
        : holding + " of " + run.guards().size() + " guards hold.";
  }

  private static String watchers(int count) {
    return count == 1 ? "One person watches." : count + " people watch.";
  }

  private static void ended(ObjectNode now, RunEnd end) {
    now.put("end", end.saw()).put("remedy", end.remedy());
  }

  private static String clock(double seconds) {
    long whole = Math.round(seconds);
    return whole / SECONDS + ":" + (whole % SECONDS < 10 ? "0" : "") + whole % SECONDS;
  }

  private static double rounded(double value) {
    return Math.round(value * 1000) / 1000.0;
  }
}
