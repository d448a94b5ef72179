package corewright.station.web.place;

import corewright.station.web.Drafts;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import java.util.List;

/** The places of a core's way, from the counter to the door, and back. */
public final class CorePlaces {
  private CorePlaces() {}

  public static List<Place> of(House house, Pages pages, Drafts drafts) {
    return List.of(
        new Papers(house),
        new Counter(house, pages, drafts),
        new WhichBuild(house, pages),
        new ConditionOf(house, pages, drafts),
        new WhatWeDo(house, pages),
        new StepBack(house, pages),
        new Rebuild(house, pages, drafts),
        new HandOver(house, pages),
        new CameBack(house, pages, drafts));
  }
}
