package corewright.station.web.place;

import corewright.bench.inspect.Symptom;
import corewright.bench.life.Act;
import corewright.profiles.Family;
import corewright.profiles.Grade;
import corewright.reports.document.Label;
import corewright.reports.ledger.Agreements;
import corewright.reports.ledger.Attached;
import corewright.reports.ledger.Standing;
import corewright.station.web.Drafts;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Phone;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.Reach;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.Given;
import corewright.station.work.Intake;
import corewright.station.work.Intake.Known;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What came in? A core is received in under a minute: label, condition, photographs, tag. */
public final class Counter implements Place {
  private static final String DRAFT = "counter";

  /** What a module of these kinds can lack. Common practice, no source. */
  private static final List<String> PARTS =
      List.of("cover", "seal", "screws", "bracket", "connector lock", "heat spreader", "vent");

  private final House house;
  private final Pages pages;
  private final Drafts drafts;
  private final PhotoDesk photos;
  private final Reach reach;

  Counter(House house, Pages pages, Drafts drafts, Reach reach) {
    this.reach = reach;
    this.house = house;
    this.pages = pages;
    this.drafts = drafts;
    this.photos = new PhotoDesk(house);
  }

  /**
   * The form.
   *
   * @param back the unit that begins its next visit; empty for a new one
   * @param known units that carry the serial that was given
   */
  public record Model(
      Typed typed,
      Optional<Known> back,
      List<Known> known,
      List<Family> families,
      List<String> customers,
      List<Grade> grades,
      List<String> parts,
      List<Symptom.Kind> symptoms,
      List<Side> sides) {}

  /**
   * What was received.
   *
   * @param claimed whether a claim is open for it: that is gone on with first
   * @param photos those of this unit, all visits
   */
  public record Received(
      Known unit,
      Standing standing,
      boolean claimed,
      List<Attached> photos,
      List<String> sizes,
      List<Side> sides,
      Phone phone) {}

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/counter", this::show);
    routes.get("/counter/known", this::known);
    routes.post("/counter", this::receive);
    routes.get("/counter/{tag}", this::received);
    routes.post("/counter/{tag}/photos", this::photograph);
    routes.post("/counter/{tag}/tag", this::tag);
    routes.post("/counter/{tag}/label", this::relabel);
  }

  private void show(Context context) {
    Intake intake = house.workshop().intake();
    Optional<Known> back =
        Optional.ofNullable(context.queryParam("tag")).filter(t -> !t.isBlank()).map(intake::unit);
    back.ifPresent(Counter::mustBeAway);
    String scanned = Objects.requireNonNullElse(context.queryParam("serial"), "").strip();
    Map<String, List<String>> typed =
        new LinkedHashMap<>(drafts.of(Visitor.of(context).name(), DRAFT));
    if (!scanned.isEmpty()) {
      typed.put("serial", List.of(scanned));
    }
    Optional.ofNullable(context.queryParam("quote"))
        .ifPresent(number -> typed.putAll(offered(number)));
    back.ifPresent(b -> typed.putAll(before(b)));
    Typed all = new Typed(typed);
    pages.show(
        context,
        PlaceName.COUNTER,
        "counter.jte",
        Map.of(
            "model",
            new Model(
                all,
                back,
                back.isPresent() ? List.of() : intake.known(all.of("serial")),
                house.workshop().catalogue().families(),
                house.workshop().ledger().customers(),
                List.of(Grade.values()),
                PARTS,
                List.of(Symptom.Kind.values()),
                List.of(Side.values()))));
  }

  private static void mustBeAway(Known known) {
    if (!known.canReturn()) {
      throw new Refused(
          known.core().tag() + " is here already: " + known.stage().words(),
          "Go on with it as it stands; a unit begins a new visit only after it has left.");
    }
  }

  /** What was offered under a number is not asked again when the parcel comes. */
  private Map<String, List<String>> offered(String number) {
    Agreements.Agreement offer = house.workshop().ledger().agreements().get(number);
    return Map.of(
        "quote", List.of(offer.number()),
        "family", List.of(offer.family()),
        "customer", List.of(offer.customer()),
        "mode", List.of(offer.mode()));
  }

  /** What is known of a unit is not asked again. */
  private static Map<String, List<String>> before(Known unit) {
    return Map.of(
        "family", List.of(unit.core().family()),
        "serial", List.of(unit.core().serial()),
        "label", List.of(unit.core().label()),
        "customer", List.of(unit.core().customer()),
        "mode", List.of(unit.core().mode()));
  }

  /** Says at once, while the form is open, what is known of a serial. */
  private void known(Context context) {
    String serial = Objects.requireNonNullElse(context.queryParam("serial"), "");
    pages.bare(
        context,
        "counterknown.jte",
        Map.of("serial", serial, "known", house.workshop().intake().known(serial)));
  }

  private void receive(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.RECEIVE);
    Typed typed = Typed.of(context);
    Grade grade =
        typed
            .perhaps("grade")
            .map(Grade::valueOf)
            .orElseThrow(
                () -> new Refused("Nobody said in which condition it came", "Choose A to X."));
    try (PhotoDesk.Pile pile = photos.take(context)) {
      String tag =
          house
              .workshop()
              .intake()
              .receive(
                  new Intake.Coming(
                      answers(typed, visitor.name()),
                      typed.perhaps("unit"),
                      typed.has("namesake", "yes"),
                      grade,
                      typed.all("missing"),
                      typed.of("quote"),
                      typed.perhaps("promised").map(Counter::day)));
      photos.keep(tag, pile, visitor.name());
      drafts.done(visitor.name(), DRAFT);
      pages.notice(context, "Received. From now on it is " + tag + ": tie its tag on.");
      Answers.go(context, "/counter/" + tag);
    }
  }

  private static LocalDate day(String said) {
    try {
      return LocalDate.parse(said);
    } catch (DateTimeParseException no) {
      throw new Refused("'" + said + "' is no day", "Choose one, as 2026-12-04.");
    }
  }

  private static corewright.station.work.Answers answers(Typed typed, String who) {
    if (typed.of("family").isEmpty()) {
      throw new Refused("Nobody said of which family it is", "Choose the family.");
    }
    Map<String, Given> symptoms = new LinkedHashMap<>();
    for (Symptom.Kind kind : Symptom.Kind.values()) {
      typed
          .perhaps(kind.id())
          .ifPresent(said -> symptoms.put(kind.id(), new Given(said, "", Optional.empty())));
    }
    return new corewright.station.work.Answers(
        who,
        new corewright.station.work.Answers.Received(
            typed.of("family"),
            typed.of("serial"),
            typed.of("label"),
            typed.of("customer"),
            typed.of("mode"),
            typed.of("complaint")),
        Map.of(),
        Map.of(),
        symptoms,
        Map.of());
  }

  private void received(Context context) {
    Known unit = house.workshop().intake().unit(context.pathParam("tag"));
    String tag = unit.core().tag();
    pages.show(
        context,
        PlaceName.COUNTER,
        "received.jte",
        Map.of(
            "model",
            new Received(
                unit,
                house.workshop().ledger().lives().standing(tag),
                house.workshop().ledger().claims().of(tag).stream()
                    .anyMatch(claim -> claim.closed().isEmpty()),
                photos.kept(tag),
                Label.sizes(),
                List.of(Side.values()),
                Phone.of(reach, context, tag))));
  }

  private void photograph(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.RECEIVE);
    String tag = context.pathParam("tag");
    try (PhotoDesk.Pile pile = photos.take(context)) {
      if (pile.photos().isEmpty()) {
        throw new Refused("There is no photograph in the form", "Choose one or more.");
      }
      photos.keep(tag, pile, visitor.name());
      pages.notice(context, pile.photos().size() + " kept.");
    }
    Answers.go(context, "/counter/" + tag);
  }

  private void relabel(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.RECEIVE);
    Typed typed = Typed.of(context);
    String tag = context.pathParam("tag");
    house
        .workshop()
        .ledger()
        .lives()
        .relabel(tag, typed.of("serial"), typed.of("label"), typed.of("because"), visitor.name());
    pages.notice(context, "Written down; what stood there before is printed with it.");
    Answers.go(context, "/counter/" + tag);
  }

  private void tag(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.RECEIVE);
    Path file =
        house
            .workshop()
            .intake()
            .tag(context.pathParam("tag"), Typed.of(context).of("size"), visitor.name());
    Answers.go(context, Papers.href(file));
  }
}
