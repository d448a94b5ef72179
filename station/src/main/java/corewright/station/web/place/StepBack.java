package corewright.station.web.place;

import corewright.bench.life.Act;
import corewright.reports.ledger.Standing;
import corewright.reports.ledger.Step;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Takes the last step of a unit back, with its reason; what the table forbids is refused. */
final class StepBack implements Place {
  private final House house;
  private final Pages pages;

  StepBack(House house, Pages pages) {
    this.house = house;
    this.pages = pages;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.post("/stepback/{tag}", this::back);
  }

  private void back(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.STEP_BACK);
    Typed typed = Typed.of(context);
    Standing now =
        house
            .workshop()
            .ledger()
            .lives()
            .take(context.pathParam("tag"), new Step.Back(typed.of("reason")), visitor.name());
    pages.notice(context, now.tag() + " is " + now.life().stage().words() + " again.");
    Answers.go(context, "/unit/" + now.tag());
  }
}
