package corewright.station.web.place;

import corewright.bench.life.Stage;
import corewright.reports.ledger.Ledger;
import corewright.reports.ledger.Lives;
import corewright.reports.ledger.Standing;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.live.BenchLine;
import corewright.station.web.live.Benches;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What needs someone now: open questions, the overdue ones first, promises at risk, then what waits
 * for a step; above it the working day.
 */
public final class Today implements Place {
  /** Longer lists are no help to anybody who stands in front of them. */
  private static final int MOST = 50;

  private static final int RUNS = 30;

  private final House house;
  private final Pages pages;
  private final Benches benches;

  public Today(House house, Pages pages, Benches benches) {
    this.house = house;
    this.pages = pages;
    this.benches = benches;
  }

  /**
   * One thing that needs somebody.
   *
   * @param verb what to do, as {@code Answer the question}
   * @param href where it is done
   * @param why what is so
   * @param due when, as people say it
   * @param owner whose it is
   */
  public record Need(String verb, String tag, String href, String why, String due, String owner) {}

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/", this::show);
  }

  private void show(Context context) {
    Ledger ledger = house.workshop().ledger();
    LocalDate today = house.workshop().today();
    Lives lives = ledger.lives();
    List<Standing> pending = lives.at(Stage.PENDING, MOST);
    int count = lives.count(Stage.PENDING);
    List<Need> needs = new ArrayList<>();
    pending.forEach(s -> needs.add(question(s, today)));
    List<Need> promises = Promises.atRisk(ledger, today);
    needs.addAll(promises);
    count += promises.size();
    for (Waiting w : Waiting.values()) {
      int waiting = lives.count(w.stage());
      count += waiting;
      if (waiting > 0 && needs.size() < MOST) {
        lives.at(w.stage(), MOST).forEach(s -> needs.add(w.need(s, today)));
      }
    }
    List<Need> shown = needs.stream().limit(MOST).toList();
    pages.show(
        context,
        PlaceName.TODAY,
        "today.jte",
        Map.of(
            "needs",
            shown,
            "more",
            count - shown.size(),
            "heading",
            DayWords.need(count),
            "day",
            DayWords.of(today),
            "scale",
            DayScale.of(ledger.runLists().latest(RUNS), pending, house.clock().wall()),
            "benches",
            benches.all().stream().map(BenchLine::of).toList(),
            "told",
            benches.told()));
  }

  private static Need question(Standing s, LocalDate today) {
    return new Need(
        "Answer the question",
        s.tag(),
        "/decide/" + s.tag(),
        s.question(),
        DayWords.due(s.due(), today),
        s.owner());
  }
}
