package corewright.station.web.place;

import corewright.bench.life.Act;
import corewright.bench.life.Stage;
import corewright.bench.record.Decision;
import corewright.bench.record.Disposition;
import corewright.reports.ledger.Step;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;

/** Where does it go? The row that fired, the sums, and how to decide otherwise. */
final class WhatWeDo implements Place {
  private static final Map<Stage, String> WAIT = new LinkedHashMap<>();

  static {
    WAIT.put(Stage.PENDING, "Answer the question");
    WAIT.put(Stage.TESTED, "Decide");
    WAIT.put(Stage.CLOSED, "Decide again");
  }

  private final House house;
  private final Pages pages;

  WhatWeDo(House house, Pages pages) {
    this.house = house;
    this.pages = pages;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get(
        "/decide",
        c -> Queue.show(c, house, pages, PlaceName.WHAT_WE_DO, "What we do with them", WAIT));
    routes.get("/decide/{tag}", this::show);
    routes.post("/decide/{tag}", this::decide);
    routes.post("/decide/{tag}/otherwise", this::otherwise);
    routes.post("/decide/{tag}/hold", this::hold);
    routes.post("/decide/{tag}/agreed", this::agreed);
  }

  private void show(Context context) {
    pages.show(
        context,
        PlaceName.WHAT_WE_DO,
        "decide.jte",
        Map.of(
            "model",
            DecidePage.of(
                house.workshop(), house.workshop().ledger().dossier(context.pathParam("tag")))));
  }

  private void decide(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.DECIDE_REBUILD);
    Decision decision = house.workshop().decide(context.pathParam("tag"), visitor.name());
    pages.notice(context, "Decided by row " + decision.row() + ": " + decision.disposition() + ".");
    back(context);
  }

  private void otherwise(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.DECIDE_REBUILD);
    Typed typed = Typed.of(context);
    Disposition to =
        typed
            .perhaps("to")
            .map(Disposition::valueOf)
            .orElseThrow(() -> new Refused("Nobody said what else becomes of it", "Choose one."));
    house
        .workshop()
        .overrule(
            context.pathParam("tag"), to, typed.of("destination"), visitor.name(), typed.of("why"));
    pages.notice(context, "Decided otherwise: " + to + ". Both are on record.");
    back(context);
  }

  private void hold(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.HOLD);
    Typed typed = Typed.of(context);
    house
        .workshop()
        .ledger()
        .lives()
        .take(
            context.pathParam("tag"),
            new Step.Hold(typed.of("question"), typed.of("owner"), day(typed.of("due"))),
            visitor.name());
    pages.notice(context, "It waits for its answer.");
    back(context);
  }

  private static LocalDate day(String due) {
    try {
      return LocalDate.parse(due);
    } catch (DateTimeParseException none) {
      throw new Refused("Nobody said until when", "Give a day, as 2026-12-03.");
    }
  }

  private void agreed(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.HOLD);
    Typed typed = Typed.of(context);
    String name = typed.of("name");
    house
        .workshop()
        .agreeing()
        .say(context.pathParam("tag"), name, typed.of("answer"), typed.of("by"), visitor.name());
    pages.notice(
        context,
        "Written down: " + name + ", " + typed.of("answer") + ". Decide it anew by the table.");
    back(context);
  }

  private static void back(Context context) {
    Answers.go(context, "/decide/" + context.pathParam("tag"));
  }
}
