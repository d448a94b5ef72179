package corewright.station.web.place;

import corewright.bench.life.Stage;
import corewright.reports.ledger.Standing;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.live.BenchLine;
import corewright.station.web.live.Benches;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** What needs someone now: open questions, the overdue ones first, then what waits for a step. */
public final class Today implements Place {
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
    String today = house.workshop().today().toString();
    List<Need> needs = new ArrayList<>();
    List<Standing> pending = new ArrayList<>(house.workshop().ledger().lives().at(Stage.PENDING));
    pending.sort(Comparator.comparing(Standing::due));
    pending.forEach(s -> needs.add(question(s, today)));
    for (Waiting w : Waiting.values()) {
      house.workshop().ledger().lives().at(w.stage()).forEach(s -> needs.add(w.need(s)));
    }
    pages.show(
        context,
        PlaceName.TODAY,
        "today.jte",
        Map.of(
            "needs",
            needs,
            "day",
            DayWords.of(house.workshop().today()),
            "benches",
            benches.all().stream().map(BenchLine::of).toList(),
            "told",
            benches.told()));
  }

  private static Need question(Standing s, String today) {
    String due = s.due().compareTo(today) < 0 ? "overdue, " + s.due() : "due " + s.due();
    return new Need(
        "Answer the question", s.tag(), "/unit/" + s.tag(), s.question(), due, s.owner());
  }
}
