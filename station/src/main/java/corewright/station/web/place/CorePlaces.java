package corewright.station.web.place;

import corewright.station.web.Drafts;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.Reach;
import java.util.List;

/** The places of a core's way, from the counter to the door, and back. */
public final class CorePlaces {
  private CorePlaces() {}

  public static List<Place> of(House house, Pages pages, Drafts drafts, Reach reach) {
    return List.of(
        new Papers(house),
        new Counter(house, pages, drafts, reach),
        new Photographing(house, pages),
        new WhichBuild(house, pages),
        new ConditionOf(house, pages, drafts),
        new WhatWeDo(house, pages),
        new StepBack(house, pages),
        new Rebuild(house, pages, drafts),
        new HandOver(house, pages),
        new CameBack(house, pages, drafts));
  }
}
