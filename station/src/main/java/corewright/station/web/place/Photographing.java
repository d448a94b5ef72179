package corewright.station.web.place;

import corewright.bench.life.Act;
import corewright.reports.ledger.Attached;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Phone;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.Intake.Known;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** A telephone's page: one unit, its sides, the camera. A code on the unit's pages leads here. */
public final class Photographing implements Place {
  private final House house;
  private final Pages pages;
  private final PhotoDesk photos;

  Photographing(House house, Pages pages) {
    this.house = house;
    this.pages = pages;
    this.photos = new PhotoDesk(house);
  }

  /** The unit and what was kept of it. */
  public record Model(String tag, String what, List<Side> sides, List<Attached> kept) {}

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/" + Phone.path("{tag}"), this::show);
    routes.post("/" + Phone.path("{tag}"), this::keep);
  }

  private void show(Context context) {
    Known unit = house.workshop().intake().unit(context.pathParam("tag"));
    pages.show(
        context,
        PlaceName.COUNTER,
        "photograph.jte",
        Map.of(
            "model",
            new Model(
                unit.core().tag(),
                unit.core().family()
                    + (unit.core().serial().isEmpty() ? "" : ", serial " + unit.core().serial()),
                List.of(Side.values()),
                photos.kept(unit.core().tag()))));
  }

  private void keep(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.RECEIVE);
    String tag = context.pathParam("tag");
    try (PhotoDesk.Pile pile = photos.take(context)) {
      if (pile.photos().isEmpty()) {
        throw new Refused("No picture was taken yet", "Press a side, and take its picture.");
      }
      photos.keep(tag, pile, visitor.name());
      pages.notice(context, pile.photos().size() + " kept with " + tag + ".");
    }
    Answers.go(context, "/" + Phone.path(tag));
  }
}
