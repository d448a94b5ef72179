package corewright.station.web.live;

import corewright.bench.record.Disposition;
import corewright.bench.record.Dossier;
import corewright.bench.record.RunRecord;
import corewright.bench.record.Verdict;
import corewright.profiles.Catalogue;
import corewright.station.demo.SampleBench;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Where people practise: a unit with a hidden fault, the bench, what would you say, then the truth.
 */
final class PracticePlace implements Place {
  private static final List<String> VERDICTS =
      Arrays.stream(Verdict.values()).map(Enum::name).toList();
  private static final List<String> DISPOSITIONS =
      Arrays.stream(Disposition.values()).map(Enum::name).toList();

  private final Pages pages;
  private final Benches benches;

  PracticePlace(Pages pages, Benches benches) {
    this.pages = pages;
    this.benches = benches;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/practice", this::show);
    routes.post("/practice/take", this::take);
    routes.get("/practice/{tag}", this::asked);
    routes.post("/practice/{tag}", this::said);
  }

  private void show(Context context) {
    Catalogue catalogue = benches.practice().workshop().catalogue();
    pages.show(
        context,
        PlaceName.PRACTICE,
        "practice.jte",
        Map.of("families", Benches.EMULATED.stream().map(catalogue::family).toList()));
  }

  private void take(Context context) {
    String family = field(context, "family");
    if (!Benches.EMULATED.contains(family)) {
      throw new Refused("There is no emulated bench for " + family, "Choose one of the list.");
    }
    String tag = benches.practice().take(family);
    Answers.go(context, "/bench/" + Practice.benchOf(family) + "?tag=" + tag);
  }

  private void asked(Context context) {
    PracticeCase it = of(context);
    String verdict = Objects.requireNonNullElse(context.queryParam("verdict"), "");
    String disposition = Objects.requireNonNullElse(context.queryParam("disposition"), "");
    boolean said = VERDICTS.contains(verdict) && DISPOSITIONS.contains(disposition);
    pages.show(
        context,
        PlaceName.PRACTICE,
        "practiced.jte",
        Map.of(
            "it",
            it,
            "verdicts",
            VERDICTS,
            "dispositions",
            DISPOSITIONS,
            "saidVerdict",
            said ? verdict : "",
            "saidDisposition",
            said ? disposition : "",
            "truth",
            said ? SampleBench.truth(it.tag()) : ""));
  }

  private void said(Context context) {
    String verdict = field(context, "verdict");
    String disposition = field(context, "disposition");
    if (!VERDICTS.contains(verdict) || !DISPOSITIONS.contains(disposition)) {
      throw new Refused("Both are asked", "Say what it is, and where it goes.");
    }
    Answers.go(
        context,
        Practice.PATH
            + context.pathParam("tag")
            + "?verdict="
            + verdict
            + "&disposition="
            + disposition);
  }

  private PracticeCase of(Context context) {
    String tag = context.pathParam("tag");
    if (!benches.practice().workshop().ledger().knows(tag)) {
      throw new Refused("Nobody practised on " + tag, "Take a unit first.");
    }
    Dossier dossier = benches.practice().workshop().ledger().dossier(tag);
    Optional<RunRecord> run = dossier.runs().stream().reduce((a, b) -> b);
    return PracticeCase.of(
        dossier, run.orElseThrow(() -> new Refused(tag + " was not on the bench yet", "Run it.")));
  }

  private static String field(Context context, String name) {
    return Objects.requireNonNullElse(context.formParam(name), "");
  }
}
