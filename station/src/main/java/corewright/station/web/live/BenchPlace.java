package corewright.station.web.live;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.bench.life.Act;
import corewright.bench.record.Dossier;
import corewright.profiles.Profile;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.web.live.Preparations.Prepared;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The benches: which there are, one before its start, one while it runs, its STOP. */
final class BenchPlace implements Place {
  private final Pages pages;
  private final Benches benches;
  private final HandKept kept;

  BenchPlace(Pages pages, Benches benches, HandKept kept) {
    this.pages = pages;
    this.benches = benches;
    this.kept = kept;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/bench", this::list);
    routes.get("/bench/glance", this::glance);
    routes.get("/bench/{id}", this::show);
    routes.get("/bench/{id}/live", this::stream);
    routes.post("/bench/{id}/prepare", this::prepare);
    routes.post("/bench/{id}/start", this::start);
    routes.post("/bench/{id}/stop", this::stop);
  }

  private void list(Context context) {
    List<LiveBench> all = benches.all();
    String tag = Objects.requireNonNullElse(context.queryParam("tag"), "");
    Optional<LiveBench> only =
        tag.isEmpty()
            ? Optional.of(all).filter(a -> a.size() == 1).map(a -> a.get(0))
            : all.stream().filter(b -> fits(b, tag)).findFirst();
    if (only.isPresent()) {
      String more = tag.isEmpty() ? "" : "?tag=" + tag;
      context.redirect("/bench/" + only.get().id() + more);
      return;
    }
    pages.show(
        context,
        PlaceName.BENCH,
        "benches.jte",
        Map.of(
            "benches",
            all.stream().map(BenchLine::of).toList(),
            "mistakes",
            benches.mistakes(),
            "left",
            benches.told(),
            "tag",
            tag));
  }

  private static boolean fits(LiveBench bench, String tag) {
    Workshop shop = bench.workshop();
    return shop.ledger().knows(tag)
        && bench
            .description()
            .fixture()
            .families()
            .contains(shop.ledger().dossier(tag).core().family());
  }

  private void glance(Context context) {
    Glance glance = benches.glance();
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("name", glance.name());
    json.put("form", glance.form());
    json.put("words", glance.words());
    json.put("volts", glance.volts());
    json.put("href", glance.href());
    json.put("stoppable", glance.stoppable());
    context.contentType("application/json").result(json.toString());
  }

  private void show(Context context) {
    LiveBench bench = benches.at(context);
    Visitor visitor = Visitor.of(context);
    String tag = Objects.requireNonNullElse(context.queryParam("tag"), "");
    if (bench.running().isPresent()) {
      pages.showLive(context, "benchlive.jte", Map.of("page", LivePage.of(bench, visitor)));
      return;
    }
    if (!tag.isEmpty() && bench.workshop().ledger().knows(tag)) {
      Prepared old = bench.preparations().of(visitor.name());
      String profile = old.tag().equals(tag) ? old.profile() : "";
      bench
          .preparations()
          .put(
              visitor.name(),
              new Prepared(
                  tag, profile, old.cautions(), old.second(), old.proved(), old.wireLog()));
    }
    pages.show(
        context,
        PlaceName.BENCH,
        "benchready.jte",
        Map.of("ready", new Readying(bench, visitor, kept).now()));
  }

  private void prepare(Context context) {
    LiveBench bench = benches.at(context);
    String tag = field(context, "tag");
    if (!tag.isEmpty() && !bench.workshop().ledger().knows(tag)) {
      throw new Refused("No unit has the tag " + tag, "Scan it, or receive it at the counter.");
    }
    String who = Visitor.of(context).name();
    Prepared old = bench.preparations().of(who);
    String second = Objects.requireNonNullElse(context.formParam("second"), old.second()).strip();
    bench
        .preparations()
        .put(
            who,
            new Prepared(
                tag,
                field(context, "profile"),
                context.formParam("cautions") != null,
                second,
                old.proved().filter(at -> second.equals(old.second())),
                context.formParam("wires") != null));
    Answers.go(context, "/bench/" + bench.id());
  }

  private void start(Context context) {
    LiveBench bench = benches.at(context);
    Visitor visitor = Visitor.of(context);
    if (!bench.isForPractice()) {
      visitor.mustBeAllowed(Act.TEST);
    }
    Prepared prepared = bench.preparations().of(visitor.name());
    Ready ready = new Readying(bench, visitor, kept).now();
    bench.running().ifPresent(on -> bench.start(on.start())); // refused, naming who drives
    if (!ready.canStart()) {
      throw new Refused(
          ready.missing().get(0).word()
              + ": "
              + ready.missing().get(0).text().replaceAll("\\.$", ""),
          "Nothing was energised.");
    }
    Workshop shop = bench.workshop();
    Dossier dossier = shop.ledger().dossier(prepared.tag());
    Profile profile = new Readying(bench, visitor, kept).profile(dossier);
    bench.start(
        new Start(
            prepared.tag(),
            profile.id(),
            visitor.name(),
            prepared.present(benches.clock().wall()),
            kept.readings(bench, dossier, profile),
            prepared.wireLog()));
    bench.preparations().done(visitor.name());
    Answers.go(context, "/bench/" + bench.id());
  }

  /** Nobody is asked who they are beyond having come in, and nobody is asked twice. */
  private void stop(Context context) {
    benches.at(context).stop(Visitor.of(context).name());
    context.status(HttpStatus.NO_CONTENT);
  }

  private void stream(Context context) {
    LiveBench bench = benches.at(context);
    Optional<LiveRun> run = bench.run();
    if (run.isEmpty()) {
      context.status(HttpStatus.NO_CONTENT); // tells the browser not to ask again
      return;
    }
    new LiveStream(bench, run.get(), benches.clock(), benches::isClosed).to(context);
  }

  private static String field(Context context, String name) {
    return Objects.requireNonNullElse(context.formParam(name), "").strip();
  }
}
