package corewright.station.web.live;

import corewright.bench.record.Dossier;
import corewright.profiles.Step;
import corewright.station.web.door.Visitor;
import java.util.List;

/**
 * A bench while it runs, as its page begins; what moves comes by the stream.
 *
 * @param unit what is on it, in words
 * @param drives who drives what, in words
 * @param plan what the picture is drawn from
 * @param steps the titles of the steps
 * @param next where the result is read
 * @param nextWords what is done there
 */
public record LivePage(
    String bench,
    boolean emulated,
    Plate plate,
    String tag,
    String unit,
    String drives,
    String plan,
    List<String> steps,
    String next,
    String nextWords) {

  static LivePage of(LiveBench bench, Visitor visitor) {
    LiveRun run = bench.run().orElseThrow();
    Dossier dossier = bench.workshop().ledger().dossier(run.start().tag());
    String build =
        dossier.identification().map(i -> i.variant()).filter(v -> !v.isEmpty()).orElse("");
    String driver = run.start().driver();
    return new LivePage(
        bench.id(),
        bench.emulated(),
        bench.plate(),
        run.start().tag(),
        dossier.core().family()
            + (build.isEmpty() ? "" : ", build " + build)
            + ", fixture "
            + bench.description().fixture().id(),
        run.course().profile().title()
            + ". "
            + (driver.equals(visitor.name()) ? "You drive " : driver + " drives ")
            + bench.id(),
        PlanJson.of(run.course()),
        run.course().profile().steps().stream().map(Step::title).toList(),
        bench.results(run.start().tag()),
        bench.isForPractice() ? "Say what it is" : "See what it did");
  }
}
