package corewright.station.web.place;

import corewright.bench.life.Stage;
import corewright.reports.ledger.Found;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Standing;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.PlaceName;
import corewright.station.web.When;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The units that wait at a place, under its bare address.
 *
 * @param title what is done there, as {@code Which build is it?}
 * @param none what is said where nothing waits
 * @param more how many wait beyond those that are shown
 */
public record Queue(String title, String none, List<Line> lines, int more) {
  /** So many are shown: nobody works through more without asking for one by its tag. */
  private static final int MOST = 60;

  public Queue {
    lines = List.copyOf(lines);
  }

  /**
   * One unit that waits.
   *
   * @param verb what is done with it
   */
  public record Line(String verb, String tag, String href, String what, String since) {}

  /**
   * What waits at some stages.
   *
   * @param verbs what is done with a unit of each stage, in the order in which they are shown
   */
  static Queue of(House house, PlaceName place, String title, Map<Stage, String> verbs) {
    Ledger ledger = house.workshop().ledger();
    List<Line> lines = new ArrayList<>();
    int all = 0;
    for (Map.Entry<Stage, String> stage : verbs.entrySet()) {
      List<Standing> at = ledger.lives().at(stage.getKey());
      all += at.size();
      at.stream()
          .limit(Math.max(0, MOST - lines.size()))
          .map(s -> line(ledger, s, stage.getValue(), place))
          .forEach(lines::add);
    }
    return new Queue(title, "Nothing waits here.", lines, all - lines.size());
  }

  /** Shows it as a page of its own. */
  static void show(
      Context context,
      House house,
      Pages pages,
      PlaceName place,
      String title,
      Map<Stage, String> verbs) {
    pages.show(context, place, "queue.jte", Map.of("queue", of(house, place, title, verbs)));
  }

  private static Line line(Ledger ledger, Standing standing, String verb, PlaceName place) {
    String what = ledger.find(standing.tag()).stream().findFirst().map(Queue::what).orElse("");
    return new Line(
        verb,
        standing.tag(),
        place.path() + "/" + standing.tag(),
        what,
        standing.life().stage().words() + " since " + When.day(Instant.parse(standing.since())));
  }

  private static String what(Found unit) {
    return unit.family() + (unit.serial().isEmpty() ? "" : ", serial " + unit.serial());
  }
}
