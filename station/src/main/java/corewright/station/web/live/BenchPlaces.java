package corewright.station.web.live;

import corewright.station.web.Drafts;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.door.Door;
import java.util.List;

/** The places at the bench. */
public final class BenchPlaces {
  private BenchPlaces() {}

  public static List<Place> of(
      House house, Pages pages, Drafts drafts, Benches benches, Door door) {
    HandKept kept = new HandKept(drafts);
    return List.of(
        new BenchPlace(pages, benches, kept),
        new SecondPlace(benches, door, house.clock()),
        new HandPlace(pages, benches, drafts, kept),
        new PracticePlace(pages, benches));
  }
}
