package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.measures.statistics.Interval;
import corewright.station.work.Cover;
import corewright.station.work.InWork;
import corewright.station.work.OpenToday;
import corewright.station.work.Rate;
import corewright.station.work.Returns;
import corewright.station.work.Scorecard;
import corewright.station.work.ShopFigures;
import java.util.List;
import java.util.Optional;

/** The owner's figures as JSON, with the tags behind every number. */
final class FiguresJson {
  private FiguresJson() {}

  static ObjectNode of(ShopFigures f, OpenToday open) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    rates(json.putArray("yield"), f.yield());
    rates(json.putArray("firstPassByTechnician"), f.firstPassByTechnician());
    rates(json.putArray("firstPassByBench"), f.firstPassByBench());
    rates(json.putArray("noFaultFound"), f.noFaultFound());
    rates(json.putArray("noFaultByTest"), f.noFaultByTest());
    rates(json.putArray("failedNowhereElse"), f.failedNowhereElse());
    rates(json.putArray("promisesKept"), f.promisesKept());
    rates(json.putArray("suppliers"), f.suppliers());
    rates(json.putArray("confirmedFaults"), f.faults());
    rates(json.putArray("confirmedAsPredicted"), List.of(f.predicted()));
    rates(json.putArray("returned"), f.early());
    ArrayNode months = json.putArray("shipMonths");
    f.returns()
        .forEach(
            m -> {
              ObjectNode month = months.addObject();
              month.put("month", m.month()).put("shipped", m.shipped());
              month.put("inService", m.inService());
              m.again().forEach(month.putArray("againWithoutAClaim")::add);
              ObjectNode back = month.putObject("returnedByMonthInService");
              m.returned().forEach((k, tags) -> tags.forEach(back.withArray("/" + k)::add));
            });
    ObjectNode weibull = json.putObject("weibull");
    weibull.put("failures", f.weibull().failures()).put("inService", f.weibull().inService());
    weibull.put("shape", f.weibull().shape().orElse(null));
    interval(weibull, "shapeInterval", f.weibull().shapeInterval());
    weibull.put("scale_months", f.weibull().scale_months().orElse(null));
    interval(weibull, "scaleInterval", f.weibull().scaleInterval());
    weibull.put("refused", f.weibull().refused());
    ArrayNode alive = json.putArray("survival");
    for (Returns.Alive s : f.survival()) {
      ObjectNode at = alive.addObject();
      at.put("months", s.months()).put("atRisk", s.atRisk()).put("failed", s.failed());
      at.put("share", s.share());
      interval(at, "interval95", Optional.of(s.interval()));
      s.tags().forEach(at.putArray("tags")::add);
    }
    ObjectNode expected = json.putObject("expectedByConfirmed");
    f.expected()
        .forEach(
            (fault, as) -> {
              ObjectNode row = expected.putObject(fault);
              as.forEach((group, tags) -> tags.forEach(row.putArray(group)::add));
            });
    ArrayNode cards = json.putArray("scorecards");
    for (Scorecard c : f.scorecards()) {
      ObjectNode card = cards.addObject();
      card.put("supplier", c.supplier()).put("cores", c.cores());
      rates(card.putArray("sellable"), List.of(c.sellable()));
      rates(card.putArray("unusable"), List.of(c.unusable()));
      rates(card.putArray("nothingFound"), List.of(c.nothingFound()));
      rates(card.putArray("claimed"), List.of(c.claimed()));
      card.put("days_to_sell", c.days_to_sell().orElse(null));
    }
    today(json, open);
    ObjectNode turnaround = json.putObject("turnaround_days");
    turnaround.put("n", f.turnaround_days().n());
    turnaround.put("median", f.turnaround_days().median().orElse(null));
    interval(turnaround, "medianInterval95", f.turnaround_days().medianInterval());
    turnaround.put("p90", f.turnaround_days().p90().orElse(null));
    interval(turnaround, "p90Interval95", f.turnaround_days().p90Interval());
    rates(turnaround.putArray("shipped"), f.turnaround_days().within());
    return json;
  }

  private static void today(ObjectNode json, OpenToday open) {
    ArrayNode work = json.putArray("inWork");
    for (InWork w : open.work()) {
      ObjectNode at = work.addObject();
      at.put("stage", w.stage().words()).put("n", w.tags().size());
      at.put("median_days", w.median_days()).put("oldest_days", w.oldest_days());
      w.tags().forEach(at.putArray("tags")::add);
    }
    ArrayNode stock = json.putArray("cover");
    for (Cover c : open.cover()) {
      ObjectNode build = stock.addObject();
      build.put("build", c.build()).put("window_days", Cover.WINDOW_DAYS);
      c.ready().forEach(build.putArray("ready")::add);
      c.cores().forEach(build.putArray("cores")::add);
      c.sold().forEach(build.putArray("sold")::add);
      build.put("ready_days", c.ready_days().orElse(null));
      build.put("all_days", c.all_days().orElse(null));
    }
    ArrayNode questions = json.putArray("openQuestions");
    open.questions()
        .forEach(
            q ->
                questions
                    .addObject()
                    .put("tag", q.tag())
                    .put("question", q.question())
                    .put("owner", q.owner())
                    .put("due", q.due())
                    .put("age_days", q.age_days())
                    .put("overdue", q.overdue()));
    ArrayNode deposits = json.putArray("depositsOwed");
    open.deposits()
        .forEach(
            d ->
                deposits
                    .addObject()
                    .put("number", d.number())
                    .put("customer", d.customer())
                    .put("amount", d.amount().toString())
                    .put("due", d.due()));
    ObjectNode owed = json.putObject("owed");
    open.owed().forEach((currency, sum) -> owed.put(currency, sum.toString()));
  }

  private static void rates(ArrayNode list, List<Rate> rates) {
    for (Rate r : rates) {
      ObjectNode rate = list.addObject();
      rate.put("of", r.of()).put("count", r.hits().size()).put("n", r.n());
      rate.put("rate", r.n() == 0 ? null : (double) r.hits().size() / r.n());
      interval(rate, "interval95", r.interval());
      r.hits().forEach(rate.putArray("tags")::add);
      r.others().forEach(rate.putArray("otherTags")::add);
    }
  }

  private static void interval(ObjectNode to, String name, Optional<Interval> interval) {
    ArrayNode ends = to.putArray(name);
    interval.ifPresent(i -> ends.add(i.low()).add(i.high()));
  }
}
