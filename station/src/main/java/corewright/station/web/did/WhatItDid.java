package corewright.station.web.did;

import corewright.bench.record.RunRecord;
import corewright.reports.chart.Numerals;
import corewright.reports.ledger.RunFact;
import corewright.reports.ledger.RunLists;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.Tint;
import corewright.station.web.When;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.Refused;
import corewright.station.work.RunStories.Story;
import corewright.station.work.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What it did: the run of a unit that was made last, or any other by its id. */
public final class WhatItDid implements Place {
  private static final int MOST = 40;

  private final House house;
  private final Pages pages;

  public WhatItDid(House house, Pages pages) {
    this.house = house;
    this.pages = pages;
  }

  /** One line of the list of runs. */
  public record Line(
      String id, String tag, String as, String verdict, String when, String bench, boolean real) {}

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/did", this::latest);
    routes.get("/did/{which}", this::show);
    routes.get("/did/{which}/picture", this::picture);
    routes.post("/did/{which}/amend", this::amend);
  }

  private void latest(Context context) {
    List<Line> lines =
        house.workshop().ledger().runLists().latest(MOST).stream().map(WhatItDid::line).toList();
    pages.show(context, PlaceName.WHAT_IT_DID, "didlist.jte", Map.of("runs", lines));
  }

  private static Line line(RunFact r) {
    return new Line(
        r.id(),
        r.tag(),
        Purposes.words(r.purpose()) + ", run " + r.number(),
        r.verdict(),
        When.moment(r.started()),
        r.bench(),
        !r.source().equals("EMULATED"));
  }

  private void show(Context context) {
    Workshop workshop = house.workshop();
    String which = context.pathParam("which");
    if (workshop.ledger().runLists().find(which).isEmpty() && workshop.ledger().knows(which)) {
      String id =
          RunLists.last(workshop.ledger().runLists().of(which))
              .map(RunFact::id)
              .orElseThrow(
                  () ->
                      new Refused(
                          "Unit " + which + " was not tested yet", "Test it on the bench first."));
      context.redirect("/did/" + id);
      return;
    }
    Story story = workshop.stories().of(which);
    DidPage page =
        DidPage.of(
            story,
            workshop.ledger().lives().standing(story.run().tag()).life().stage(),
            Numerals.of(workshop.shop().region()),
            workshop.limits(),
            workshop.shiftCheck().suspect(story.run()).orElse(""));
    pages.show(context, PlaceName.WHAT_IT_DID, "did.jte", Map.of("page", page));
  }

  private void picture(Context context) {
    Workshop workshop = house.workshop();
    RunRecord run = workshop.stories().of(context.pathParam("which")).run();
    Path file =
        workshop
            .publishing()
            .picture(run)
            .orElseThrow(
                () -> new Refused("Run " + run.id() + " left no curves", "Nothing to draw."));
    Tint.send(context, file);
  }

  private void amend(Context context) {
    String run = context.pathParam("which");
    house
        .workshop()
        .ledger()
        .runs()
        .amend(run, field(context, "text"), field(context, "reason"), Visitor.of(context).name());
    pages.notice(context, "Added beside the run, which stays as it was signed.");
    Answers.go(context, "/did/" + run);
  }

  private static String field(Context context, String name) {
    return Objects.requireNonNullElse(context.formParam(name), "");
  }
}
