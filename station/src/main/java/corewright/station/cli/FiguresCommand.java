package corewright.station.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.measures.Figures;
import corewright.measures.statistics.Interval;
import corewright.station.work.Rate;
import corewright.station.work.ShopFigures;
import corewright.station.work.Workshop;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The owner's figures. */
@Command(
    name = "figures",
    mixinStandardHelpOptions = true,
    description = {
      "Counts the record: yield, first-pass yield, no fault found, suppliers, confirmed faults,"
          + " returns by ship month, Weibull, turnaround. Each with n and its 95 %% interval; --json"
          + " names the tags behind every number."
    },
    footer = {
      "",
      "Examples:",
      "  corewright figures",
      "  corewright figures --from 2026-01-01 --until 2026-06-30 --shipped --json"
    })
final class FiguresCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private StepOptions step;

  @Option(names = "--from", paramLabel = "DATE", description = "First day that counts.")
  private @Nullable LocalDate from;

  @Option(names = "--until", paramLabel = "DATE", description = "Last day that counts.")
  private @Nullable LocalDate until;

  @Option(names = "--shipped", description = "The days are those of shipment, not of reception.")
  private boolean shipped;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try (Workshop workshop = step.open()) {
      ShopFigures figures =
          workshop.figures(
              new ShopFigures.Period(
                  Optional.ofNullable(from), Optional.ofNullable(until), shipped));
      if (step.json) {
        out.println(RecordJson.text(json(figures)));
      } else {
        print(out, figures);
      }
      return ExitCodes.DONE;
    }
  }

  private void print(PrintWriter out, ShopFigures f) {
    out.println(
        "Period of "
            + (shipped ? "shipment" : "reception")
            + ": "
            + Optional.ofNullable(from).map(LocalDate::toString).orElse("beginning")
            + " to "
            + Optional.ofNullable(until).map(LocalDate::toString).orElse("today"));
    rates(out, "Yield by variant", f.yield());
    rates(out, "First-pass yield by technician", f.firstPassByTechnician());
    rates(out, "First-pass yield by bench", f.firstPassByBench());
    rates(out, "No fault found", f.noFaultFound());
    rates(out, "Yield by supplier, ranked from n = " + ShopFigures.ENOUGH_TO_RANK, f.suppliers());
    rates(out, "Confirmed faults", f.faults());
    rates(out, "Confirmed as predicted", List.of(f.predicted()));
    rates(out, "Returns", f.early());
    f.returns()
        .forEach(
            m ->
                out.println(
                    "  "
                        + m.month()
                        + "  shipped "
                        + m.shipped()
                        + ", in service "
                        + m.inService()
                        + m.returned().entrySet().stream()
                            .map(e -> ", back in month " + e.getKey() + ": " + e.getValue().size())
                            .reduce("", String::concat)));
    out.println("Weibull: " + weibull(f));
    out.println(
        "Turnaround: n = "
            + f.turnaround_days().n()
            + f.turnaround_days().median().map(d -> ", median " + d + " d").orElse("")
            + f.turnaround_days().p90().map(d -> ", 90 % within " + d + " d").orElse(""));
  }

  private static String weibull(ShopFigures f) {
    String n = f.weibull().failures() + " failed, " + f.weibull().inService() + " in service";
    return f.weibull().shape().isEmpty()
        ? n + "; no line: " + f.weibull().refused()
        : n
            + "; shape "
            + Figures.number(f.weibull().shape().get(), 2)
            + f.weibull().shapeInterval().map(i -> " (" + ends(i, 2) + ")").orElse("")
            + ", scale "
            + f.weibull().scale_months().map(s -> Figures.number(s, 1)).orElse("")
            + " months"
            + f.weibull().scaleInterval().map(i -> " (" + ends(i, 1) + ")").orElse("");
  }

  private static void rates(PrintWriter out, String title, List<Rate> rates) {
    out.println(title + (rates.stream().allMatch(r -> r.n() == 0) ? ": none yet" : ""));
    for (Rate r : rates) {
      r.interval()
          .ifPresent(
              i ->
                  out.println(
                      "  "
                          + (r.of().isEmpty() ? "all" : r.of())
                          + ": "
                          + r.hits().size()
                          + " of "
                          + r.n()
                          + ", "
                          + Figures.number(100.0 * r.hits().size() / r.n(), 0)
                          + " % ("
                          + Figures.number(100 * i.low(), 0)
                          + " to "
                          + Figures.number(100 * i.high(), 0)
                          + " %)"));
    }
  }

  private static String ends(Interval i, int decimals) {
    return Figures.number(i.low(), decimals) + " to " + Figures.number(i.high(), decimals);
  }

  private static ObjectNode json(ShopFigures f) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    rates(json.putArray("yield"), f.yield());
    rates(json.putArray("firstPassByTechnician"), f.firstPassByTechnician());
    rates(json.putArray("firstPassByBench"), f.firstPassByBench());
    rates(json.putArray("noFaultFound"), f.noFaultFound());
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
    json.putObject("turnaround_days")
        .put("n", f.turnaround_days().n())
        .put("median", f.turnaround_days().median().orElse(null))
        .put("p90", f.turnaround_days().p90().orElse(null));
    return json;
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
