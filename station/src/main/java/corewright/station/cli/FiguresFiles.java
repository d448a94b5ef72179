package corewright.station.cli;

import corewright.reports.chart.FigurePictures;
import corewright.reports.chart.FigurePictures.Dot;
import corewright.station.work.Cover;
import corewright.station.work.OpenToday;
import corewright.station.work.Rate;
import corewright.station.work.Refused;
import corewright.station.work.Scorecard;
import corewright.station.work.ShopFigures;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** The owner's figures as files: a picture of each, and its data with the tags beside it. */
record FiguresFiles(FigureFolder to) {
  private static final int MOST_DOTS = 40;

  private static final List<String> RATE =
      List.of("of", "count", "n", "share", "low95", "high95", "tags", "other_tags");

  /**
   * Writes all of them.
   *
   * @throws Refused if the folder is there already
   */
  void write(ShopFigures f, OpenToday open) {
    to.make();
    try {
      rates("yield", "Rebuilds that can be sold, by build", f.yield());
      rates(
          "first-pass-technician",
          "Final test passed at once, by technician",
          f.firstPassByTechnician());
      rates("first-pass-bench", "Final test passed at once, by bench", f.firstPassByBench());
      rates("no-fault-found", "No fault found", f.noFaultFound());
      rates("no-fault-by-test", "No fault found, by what was tested", f.noFaultByTest());
      rates("failed-nowhere-else", "Failed in the cold or heat alone", f.failedNowhereElse());
      rates("promises-kept", "Promises kept", f.promisesKept());
      rates("suppliers", "Bought cores that could be sold, by supplier", f.suppliers());
      rates("confirmed-faults", "Faults confirmed by teardown", f.faults());
      expected(f);
      rates("returns-early", "Back under claim", f.early());
      new LifetimeFiles(to).write(f);
      scorecards(f);
      rates("turnaround", "Shipped within", f.turnaround_days().within());
      work(open);
      cover(open);
      questions(open);
      deposits(open);
    } catch (IOException refused) {
      throw new UncheckedIOException("cannot write into " + to.folder(), refused);
    }
  }

  private void rates(String name, String title, List<Rate> rates) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    List<Dot> dots = new ArrayList<>();
    for (Rate r : rates) {
      rows.add(cells(r));
      r.interval()
          .ifPresent(
              i ->
                  dots.add(
                      new Dot(
                          (r.of().isEmpty() ? "all" : r.of()) + ", n = " + r.n(),
                          100.0 * r.hits().size() / r.n(),
                          100 * i.low(),
                          100 * i.high())));
    }
    to.csv(name, RATE, rows);
    if (!dots.isEmpty()) {
      to.picture(
          name,
          FigurePictures.dots(
              title + (dots.size() > MOST_DOTS ? " (the first " + MOST_DOTS + ")" : ""),
              "share with its 95 % interval (Wilson), %",
              100,
              dots.subList(0, Math.min(MOST_DOTS, dots.size()))));
    }
  }

  private static List<String> cells(Rate r) {
    return List.of(
        r.of(),
        String.valueOf(r.hits().size()),
        String.valueOf(r.n()),
        r.n() == 0 ? "" : String.valueOf((double) r.hits().size() / r.n()),
        r.interval().map(i -> String.valueOf(i.low())).orElse(""),
        r.interval().map(i -> String.valueOf(i.high())).orElse(""),
        String.join(" ", r.hits()),
        String.join(" ", r.others()));
  }

  private void expected(ShopFigures f) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    f.expected()
        .forEach(
            (fault, as) ->
                as.forEach(
                    (group, tags) ->
                        rows.add(
                            List.of(
                                fault,
                                group,
                                String.valueOf(tags.size()),
                                String.join(" ", tags)))));
    to.csv("expected-and-confirmed", List.of("confirmed", "expected", "count", "tags"), rows);
  }

  private void scorecards(ShopFigures f) throws IOException {
    List<List<String>> rows = new ArrayList<>();
    f.scorecards()
        .forEach(
            c -> {
              card(rows, c, "sellable", c.sellable());
              card(rows, c, "unusable", c.unusable());
              card(rows, c, "nothing found", c.nothingFound());
              card(rows, c, "claimed", c.claimed());
            });
    List<String> header = new ArrayList<>(List.of("supplier", "cores", "days_to_sell"));
    header.addAll(RATE);
    to.csv("scorecards", header, rows);
  }

  private static void card(List<List<String>> rows, Scorecard c, String of, Rate rate) {
    List<String> row = new ArrayList<>();
    row.add(c.supplier());
    row.add(String.valueOf(c.cores()));
    row.add(c.days_to_sell().map(String::valueOf).orElse(""));
    row.addAll(cells(new Rate(of, rate.hits(), rate.others())));
    rows.add(row);
  }

  private void work(OpenToday open) throws IOException {
    to.csv(
        "in-work",
        List.of("stage", "n", "median_days", "oldest_days", "tags"),
        open.work().stream()
            .map(
                w ->
                    List.of(
                        w.stage().words(),
                        String.valueOf(w.tags().size()),
                        String.valueOf(w.median_days()),
                        String.valueOf(w.oldest_days()),
                        String.join(" ", w.tags())))
            .toList());
    if (!open.work().isEmpty()) {
      to.picture(
          "in-work",
          FigurePictures.dots(
              "In work today, by stage",
              "median age, and that of the oldest, days",
              0,
              open.work().stream()
                  .map(
                      w ->
                          new Dot(
                              w.stage().words() + ", n = " + w.tags().size(),
                              w.median_days(),
                              w.median_days(),
                              w.oldest_days()))
                  .toList()));
    }
  }

  private void cover(OpenToday open) throws IOException {
    to.csv(
        "cover",
        List.of("build", "window_days", "ready_days", "all_days", "ready", "cores", "sold"),
        open.cover().stream()
            .map(
                c ->
                    List.of(
                        c.build(),
                        String.valueOf(Cover.WINDOW_DAYS),
                        c.ready_days().map(String::valueOf).orElse(""),
                        c.all_days().map(String::valueOf).orElse(""),
                        String.join(" ", c.ready()),
                        String.join(" ", c.cores()),
                        String.join(" ", c.sold())))
            .toList());
  }

  private void questions(OpenToday open) throws IOException {
    to.csv(
        "open-questions",
        List.of("tag", "age_days", "due", "overdue", "owner", "question"),
        open.questions().stream()
            .map(
                q ->
                    List.of(
                        q.tag(),
                        String.valueOf(q.age_days()),
                        q.due(),
                        q.overdue() ? "yes" : "no",
                        q.owner(),
                        q.question()))
            .toList());
    List<Dot> ages =
        open.questions().stream()
            .limit(MOST_DOTS)
            .map(q -> new Dot(q.tag() + ", " + q.owner(), q.age_days(), q.age_days(), q.age_days()))
            .toList();
    if (!ages.isEmpty()) {
      to.picture(
          "open-questions", FigurePictures.dots("Open questions by age", "age, days", 0, ages));
    }
  }

  private void deposits(OpenToday open) throws IOException {
    to.csv(
        "deposits-owed",
        List.of("number", "customer", "amount", "currency", "taken", "due", "about"),
        open.deposits().stream()
            .map(
                d ->
                    List.of(
                        d.number(),
                        d.customer(),
                        String.valueOf(d.amount().hundredths() / 100.0),
                        d.amount().currency(),
                        d.taken(),
                        d.due(),
                        d.about()))
            .toList());
  }
}
