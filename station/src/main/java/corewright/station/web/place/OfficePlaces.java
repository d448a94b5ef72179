package corewright.station.web.place;

import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.Reach;
import corewright.station.web.did.WhatItDid;
import corewright.station.web.dropped.Dropped;
import corewright.station.web.life.Life;
import corewright.station.web.live.Benches;
import corewright.station.web.rules.Rules;
import corewright.station.web.shop.Shop;
import java.util.List;

/** The places of the office, what it did, and what a dropped file says. */
public final class OfficePlaces {
  private OfficePlaces() {}

  public static List<Place> of(House house, Pages pages, Benches benches, Reach reach) {
    return List.of(
        new WhatItDid(house, pages),
        new Life(house, pages, reach),
        new Dropped(house, pages),
        new Shop(house, pages),
        new Rules(house, pages, () -> benches.glance().stoppable(), reach.words()));
  }
}
