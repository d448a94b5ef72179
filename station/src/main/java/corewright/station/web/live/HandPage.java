package corewright.station.web.live;

import corewright.measures.Figures;
import corewright.measures.Quantity;
import corewright.measures.Unit;
import corewright.profiles.Limit;
import corewright.profiles.Profile;
import corewright.profiles.Step;
import corewright.station.web.When;
import corewright.station.work.HandEntry;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The form for what is read elsewhere.
 *
 * @param draft what its draft is called
 */
public record HandPage(
    String bench, String tag, String profile, String title, String draft, List<Row> rows) {

  /**
   * One step by hand.
   *
   * @param asks what is to be done
   * @param limit what it is held against, with the reason
   * @param counted it has no ± U
   * @param said who entered what stands there, and when; empty: nobody has
   * @param seen the moment of that, for the form to bring back; empty: nobody has
   */
  public record Row(
      String step,
      String title,
      String asks,
      String limit,
      boolean counted,
      List<String> units,
      String value,
      String expanded,
      String unit,
      String instrument,
      String said,
      String seen) {}

  /**
   * The form as it stands.
   *
   * @param typed what somebody has typed and not kept, by field; it goes before what was kept
   */
  static HandPage of(
      LiveBench bench,
      String tag,
      Profile profile,
      String draft,
      Map<String, HandKept.Entry> kept,
      Map<String, List<String>> typed) {
    return new HandPage(
        bench.id(),
        tag,
        profile.id(),
        profile.title(),
        draft,
        bench.byHand(profile).stream()
            .map(s -> row(s, profile, Optional.ofNullable(kept.get(s.id())), typed))
            .toList());
  }

  private static Row row(
      Step step, Profile profile, Optional<HandKept.Entry> kept, Map<String, List<String>> typed) {
    Quantity quantity = HandEntry.quantity(step);
    Optional<Limit> limit =
        profile.limits().stream().filter(l -> l.quantity() == quantity).findFirst();
    String usual = HandEntry.suiting(limit.map(Limit::pass).orElse(0.0), quantity.unit()).symbol();
    return new Row(
        step.id(),
        quantity.title(),
        step.title(),
        limit.map(HandPage::words).orElse("no limit: it is kept with the run"),
        quantity.unit() == Unit.ONE,
        HandEntry.scales(quantity.unit()).stream().map(HandEntry.Scale::symbol).toList(),
        field(typed, step, "value", kept.map(HandKept.Entry::value).orElse("")),
        field(typed, step, "expanded", kept.map(HandKept.Entry::expanded).orElse("")),
        field(typed, step, "unit", kept.map(HandKept.Entry::unit).orElse(usual)),
        field(typed, step, "instrument", kept.map(HandKept.Entry::instrument).orElse("")),
        kept.map(e -> "Entered by " + e.by() + ", " + When.moment(e.at()) + ".").orElse(""),
        kept.map(e -> e.at().toString()).orElse(""));
  }

  private static String field(
      Map<String, List<String>> typed, Step step, String name, String before) {
    return typed.getOrDefault(step.id() + "/" + name, List.of(before)).stream()
        .findFirst()
        .orElse(before);
  }

  private static String words(Limit limit) {
    Unit unit = limit.quantity().unit();
    HandEntry.Scale scale = HandEntry.suiting(limit.pass(), unit);
    return Figures.plain(limit.pass() / scale.factor())
        + (scale.symbol().isEmpty() ? "" : " " + scale.symbol())
        + (limit.side() == Limit.Side.AT_LEAST ? " or more" : " or less")
        + ": "
        + limit.why();
  }
}
