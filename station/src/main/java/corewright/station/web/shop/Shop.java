package corewright.station.web.shop;

import corewright.bench.life.Stage;
import corewright.bench.record.Verdict;
import corewright.reports.ledger.Found;
import corewright.reports.ledger.Query;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.shop.Counting.Counted;
import corewright.station.work.Rate;
import corewright.station.work.Refused;
import corewright.station.work.ShopFigures.Period;
import corewright.station.work.Workshop;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** How the shop is doing, and who was behind a figure. */
public final class Shop implements Place {
  private static final int MOST_FOUND = 200;

  private final House house;
  private final Pages pages;
  private final Counting counting;

  public Shop(House house, Pages pages) {
    this.house = house;
    this.pages = pages;
    this.counting = new Counting(house.clock());
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/shop", this::show);
    routes.get("/shop/behind", this::behind);
    routes.get("/shop/find", this::find);
  }

  private void show(Context context) {
    Workshop workshop = house.workshop();
    Optional<Counted> counted = counting.of(workshop, period(context));
    if (counted.isEmpty()) {
      pages.show(
          context,
          PlaceName.THE_SHOP,
          "shopcounting.jte",
          Map.of("asked", asked(context), "choices", Choices.ALL));
      return;
    }
    ShopPage page = ShopPage.of(counted.get(), workshop.ledger().stores().lots(), workshop.today());
    pages.show(
        context,
        PlaceName.THE_SHOP,
        "shop.jte",
        Map.of("page", page, "asked", asked(context), "choices", Choices.ALL));
  }

  /** The units behind one figure: those that count, and those that do not. */
  private void behind(Context context) {
    Counted counted =
        counting
            .of(house.workshop(), period(context))
            .orElseThrow(
                () -> new Refused("The figures are being counted", "Look again in a minute."));
    List<Rate> rates = RateTable.rates(counted.figures(), given(context, "of"));
    int row;
    try {
      row = Integer.parseInt(given(context, "row"));
    } catch (NumberFormatException none) {
      row = -1;
    }
    if (row < 0 || row >= rates.size()) {
      throw new Refused("There is no such figure", "Go to The shop and choose one there.");
    }
    Rate rate = rates.get(row);
    pages.show(
        context,
        PlaceName.THE_SHOP,
        "behind.jte",
        Map.of(
            "of",
            RateTable.title(counted.figures(), given(context, "of"))
                + (rate.of().isEmpty() ? "" : ": " + rate.of()),
            "hits",
            rate.hits(),
            "others",
            rate.others()));
  }

  private void find(Context context) {
    Map<String, String> asked = asked(context);
    Optional<String> nothing = Optional.empty();
    Query query =
        new Query(
            said(context, "text"),
            said(context, "lot"),
            said(context, "person"),
            said(context, "bench"),
            said(context, "fixture"),
            said(context, "from"),
            said(context, "until"),
            said(context, "stage"),
            said(context, "verdict"));
    boolean empty =
        query.equals(
            new Query(
                nothing, nothing, nothing, nothing, nothing, nothing, nothing, nothing, nothing));
    if (empty) {
      throw new Refused("Nothing was asked for", "Give a serial, a lot, a person, or the like.");
    }
    List<Found> found = house.workshop().ledger().find(query);
    pages.show(
        context,
        PlaceName.THE_SHOP,
        "shopfound.jte",
        Map.of(
            "found",
            found.stream().limit(MOST_FOUND).toList(),
            "count",
            found.size(),
            "asked",
            asked,
            "choices",
            Choices.ALL));
  }

  /** What can be chosen in the form. */
  public record Choices(List<String> stages, List<String> verdicts) {
    static final Choices ALL =
        new Choices(
            Arrays.stream(Stage.values()).map(Stage::name).toList(),
            Arrays.stream(Verdict.values()).map(Verdict::name).toList());
  }

  private static Map<String, String> asked(Context context) {
    Map<String, String> asked = new LinkedHashMap<>();
    for (String name :
        List.of(
            "text", "lot", "person", "bench", "fixture", "from", "until", "stage", "verdict",
            "shipped")) {
      asked.put(name, given(context, name));
    }
    return asked;
  }

  private static Optional<String> said(Context context, String name) {
    return Optional.of(given(context, name)).filter(s -> !s.isEmpty());
  }

  private static Period period(Context context) {
    return new Period(
        day(context, "from"), day(context, "until"), said(context, "shipped").isPresent());
  }

  private static Optional<LocalDate> day(Context context, String name) {
    try {
      return said(context, name).map(LocalDate::parse);
    } catch (DateTimeParseException none) {
      throw new Refused("'" + given(context, name) + "' is no day", "Give it as 2026-11-24.");
    }
  }

  private static String given(Context context, String name) {
    return Objects.requireNonNullElse(context.queryParam(name), "").strip();
  }
}
