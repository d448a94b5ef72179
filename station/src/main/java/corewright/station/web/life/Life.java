package corewright.station.web.life;

import corewright.bench.record.RunRecord;
import corewright.reports.chart.Numerals;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Phone;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.Reach;
import corewright.station.web.Tint;
import corewright.station.work.Lifetimes.Lifetime;
import corewright.station.work.Refused;
import corewright.station.work.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A unit's whole life on one page; a scan of its tag opens it. */
public final class Life implements Place {
  private final House house;
  private final Pages pages;
  private final Reach reach;

  public Life(House house, Pages pages, Reach reach) {
    this.reach = reach;
    this.house = house;
    this.pages = pages;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/unit/{tag}", this::show);
    routes.get("/unit/{tag}/picture", this::picture);
  }

  private void show(Context context) {
    Workshop workshop = house.workshop();
    Lifetime life = workshop.lifetimes().of(context.pathParam("tag"));
    LifePage page = LifePage.of(life, Numerals.of(workshop.shop().region()), house.clock().wall());
    pages.show(
        context,
        PlaceName.CAME_BACK,
        "life.jte",
        Map.of("page", page, "phone", Phone.of(reach, context, page.tag())));
  }

  /** One run as it was, several over one another. */
  private void picture(Context context) {
    Workshop workshop = house.workshop();
    List<RunRecord> drawn = LifePage.drawn(workshop.lifetimes().of(context.pathParam("tag")));
    Optional<Path> file =
        drawn.isEmpty()
            ? Optional.empty()
            : drawn.size() == 1
                ? workshop.publishing().picture(drawn.get(0))
                : workshop.publishing().overlay(drawn.get(0), drawn.subList(1, drawn.size()));
    Tint.send(
        context,
        file.orElseThrow(
            () ->
                new Refused(
                    "No curves of this unit can be laid over one another",
                    "Look at each run by itself.")));
  }
}
