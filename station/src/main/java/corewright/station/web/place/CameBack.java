package corewright.station.web.place;

import corewright.bench.life.Act;
import corewright.bench.life.ClaimClass.Outcome;
import corewright.reports.ledger.Attached;
import corewright.reports.ledger.ClaimDesk.Claim;
import corewright.reports.ledger.Found;
import corewright.station.web.Drafts;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.ClaimTalk;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Why is it here again? A claim: opened, answered one question at a time, classed, closed. */
public final class CameBack implements Place {
  private static final String DRAFT = "claim";

  /** What is asked when a claim comes in. Common practice, no source. */
  private static final Map<String, String> ASKED = new LinkedHashMap<>();

  static {
    ASKED.put("hours", "Hours or distance since it was fitted");
    ASKED.put("installer", "Who fitted it");
    ASKED.put("codes", "Fault codes");
    ASKED.put("harness", "Was the harness or the battery changed?");
  }

  private final House house;
  private final Pages pages;
  private final Drafts drafts;
  private final PhotoDesk photos;

  CameBack(House house, Pages pages, Drafts drafts) {
    this.house = house;
    this.pages = pages;
    this.drafts = drafts;
    this.photos = new PhotoDesk(house);
  }

  /**
   * The bare place.
   *
   * @param unit what was scanned; empty otherwise
   */
  public record Desk(List<Claim> open, String unit, Typed typed, Map<String, String> asked) {}

  /**
   * A claim that is open.
   *
   * @param photos of the unit, all visits: how it left is among them
   * @param asksBench whether a test as returned is what the table asks for
   */
  public record Model(Unit unit, ClaimTalk.State state, List<Attached> photos, boolean asksBench) {}

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/cameback", this::desk);
    routes.post("/cameback", this::open);
    routes.get("/cameback/{tag}", this::show);
    routes.post("/cameback/{tag}", this::say);
    routes.post("/cameback/{tag}/close", this::close);
    routes.post("/cameback/{tag}/report", this::report);
  }

  private void desk(Context context) {
    desk(context, Objects.requireNonNullElse(context.queryParam("unit"), ""));
  }

  private void desk(Context context, String unit) {
    List<Claim> open = house.workshop().ledger().claims().waiting();
    pages.show(
        context,
        PlaceName.CAME_BACK,
        "cameback.jte",
        Map.of(
            "desk",
            new Desk(open, unit, new Typed(drafts.of(Visitor.of(context).name(), DRAFT)), ASKED)));
  }

  private void open(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.RECEIVE);
    Typed typed = Typed.of(context);
    String tag = unit(typed.of("unit"));
    if (typed.of("symptom").isEmpty()) {
      throw new Refused("Nobody said what is wrong", "Write down the customer's own words.");
    }
    Map<String, String> asked = new LinkedHashMap<>();
    ASKED.keySet().forEach(q -> typed.perhaps(q).ifPresent(a -> asked.put(q, a)));
    house.workshop().ledger().claims().open(tag, typed.of("symptom"), asked, visitor.name());
    drafts.done(visitor.name(), DRAFT);
    pages.notice(context, "A claim is open for " + tag + ". Receive the unit when it comes.");
    Answers.go(context, "/cameback/" + tag);
  }

  /** By tag, or by the maker's serial as it stands on the unit. */
  private String unit(String typed) {
    List<Found> found =
        house.workshop().ledger().find(typed).stream()
            .filter(f -> f.why().equals("tag") || f.why().equals("serial"))
            .toList();
    if (found.size() != 1) {
      throw new Refused(
          found.isEmpty()
              ? "No unit here has the tag or serial '" + typed + "'"
              : found.size() + " units have the serial " + typed,
          found.isEmpty()
              ? "Read it again; a unit that never left us is received at the counter."
              : "Give the tag: "
                  + String.join(", ", found.stream().map(Found::tag).toList())
                  + ".");
    }
    return found.get(0).tag();
  }

  private void show(Context context) {
    String tag = house.workshop().ledger().dossier(context.pathParam("tag")).core().tag();
    boolean open =
        house.workshop().ledger().claims().of(tag).stream().anyMatch(c -> c.closed().isEmpty());
    if (!open) {
      desk(context, tag);
      return;
    }
    ClaimTalk.State state = house.workshop().claimTalk().of(tag);
    pages.show(
        context,
        PlaceName.CAME_BACK,
        "claim.jte",
        Map.of(
            "model",
            new Model(
                Unit.of(house.workshop(), state.dossier()),
                state,
                house.workshop().ledger().lives().attached(tag).stream()
                    .filter(a -> a.kind().equals("photo"))
                    .toList(),
                state.row().id().equals("C31"))));
  }

  private void say(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.IDENTIFY);
    String tag = context.pathParam("tag");
    Typed typed = Typed.of(context);
    try (PhotoDesk.Pile pile = photos.take(context, "photo-evidence", typed.of("name"))) {
      house
          .workshop()
          .claimTalk()
          .say(
              tag,
              typed.of("name"),
              typed.of("answer"),
              typed.of("rests"),
              pile.photos().stream().findFirst(),
              visitor.name());
    }
    pages.notice(context, "Written down.");
    Answers.go(context, "/cameback/" + tag);
  }

  private void close(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.IDENTIFY);
    String tag = context.pathParam("tag");
    Typed typed = Typed.of(context);
    Optional<Outcome> outcome = typed.perhaps("outcome").map(Outcome::valueOf);
    Claim closed =
        house.workshop().claimTalk().close(tag, outcome, typed.of("reason"), visitor.name());
    pages.notice(context, "Closed: " + closed.claimClass() + ", " + words(closed.outcome()) + ".");
    Answers.go(context, "/cameback");
  }

  private void report(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.IDENTIFY);
    Answers.go(
        context,
        Papers.href(
            house
                .workshop()
                .publishing()
                .claimReport(
                    house.workshop().claiming().latest(context.pathParam("tag")), visitor.name())));
  }

  private static String words(String outcome) {
    return outcome.toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
  }
}
