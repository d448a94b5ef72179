package corewright.station.web.place;

import corewright.bench.diagnose.Group;
import corewright.bench.life.Act;
import corewright.bench.life.Stage;
import corewright.bench.record.Decision;
import corewright.bench.record.Diagnosis;
import corewright.reports.ledger.Fitted;
import corewright.reports.ledger.Step;
import corewright.reports.ledger.Stores.Lot;
import corewright.station.web.Drafts;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.Paperwork;
import corewright.station.work.Rebuilding;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** What went in and out? Opened, parts by position and lot, what was found, closed. */
public final class Rebuild implements Place {
  private static final int ROWS = 4;
  private static final Set<Stage> AGAIN =
      EnumSet.of(Stage.CLOSED, Stage.PROVEN, Stage.SEALED, Stage.PACKED, Stage.IN_STOCK);
  private static final Map<Stage, String> WAIT = new LinkedHashMap<>();

  static {
    WAIT.put(Stage.OPEN, "Go on with it");
    WAIT.put(Stage.TO_REBUILD, "Rebuild it");
    WAIT.put(Stage.CLOSED, "It is closed");
  }

  private final House house;
  private final Pages pages;
  private final Drafts drafts;

  Rebuild(House house, Pages pages, Drafts drafts) {
    this.house = house;
    this.pages = pages;
    this.drafts = drafts;
  }

  /**
   * The rebuild of a unit.
   *
   * @param open whether its cover is off
   * @param canOpen whether it may be opened as it stands, once it is discharged
   * @param again whether it was closed before, so that opening undoes something
   * @param lot the lot that was scanned; empty otherwise
   * @param expected the groups that the readings point at, the most probable first
   */
  public record Model(
      Unit unit,
      Rebuilding.State state,
      boolean open,
      boolean canOpen,
      boolean again,
      boolean canStepBack,
      String lot,
      Typed typed,
      List<Integer> rows,
      List<Diagnosis.Candidate> expected,
      List<Group> groups) {}

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/rebuild", this::list);
    routes.post("/rebuild", this::store);
    routes.get("/rebuild/{tag}", this::show);
    routes.post("/rebuild/{tag}/safe", this::safe);
    routes.post("/rebuild/{tag}/open", this::open);
    routes.post("/rebuild/{tag}/work", this::work);
    routes.post("/rebuild/{tag}/found", this::found);
    routes.post("/rebuild/{tag}/close", this::close);
    routes.post("/rebuild/{tag}/sheet", this::sheet);
  }

  private void list(Context context) {
    pages.show(
        context,
        PlaceName.REBUILD,
        "rebuildlist.jte",
        Map.of(
            "queue",
            Queue.of(house, PlaceName.REBUILD, "Rebuild", WAIT),
            "lots",
            house.workshop().ledger().stores().lots()));
  }

  private void store(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.WORK);
    Typed typed = Typed.of(context);
    int quantity = (int) number(typed.of("quantity"), "how many came");
    if (typed.of("lot").isEmpty()) {
      throw new Refused("A lot without a name", "Give it the name that stands on its bin.");
    }
    Lot lot =
        new Lot(
            typed.of("lot"),
            typed.of("part"),
            quantity,
            quantity,
            typed.of("supplier"),
            typed.of("dateCode"));
    house.workshop().ledger().stores().take(lot, visitor.name());
    pages.notice(context, lot.lot() + " is in store: " + quantity + " × " + lot.part() + ".");
    Answers.go(context, "/rebuild");
  }

  private void show(Context context) {
    Rebuilding.State state = house.workshop().rebuilding().of(context.pathParam("tag"));
    Unit unit = Unit.of(house.workshop(), state.dossier());
    Stage stage = unit.standing().life().stage();
    boolean open = stage == Stage.OPEN;
    pages.show(
        context,
        PlaceName.REBUILD,
        "rebuild.jte",
        Map.of(
            "model",
            new Model(
                unit,
                state,
                open,
                mayOpen(stage),
                AGAIN.contains(stage),
                unit.standing().life().after(Act.STEP_BACK).isPresent(),
                Objects.requireNonNullElse(context.queryParam("lot"), "").toUpperCase(Locale.ROOT),
                new Typed(drafts.of(Visitor.of(context).name(), "work-" + unit.tag())),
                java.util.stream.IntStream.rangeClosed(1, ROWS).boxed().toList(),
                state
                    .dossier()
                    .decision()
                    .flatMap(Decision::diagnosis)
                    .map(Diagnosis::candidates)
                    .orElse(List.of()),
                List.of(Group.values()))));
  }

  private static boolean mayOpen(Stage stage) {
    return new corewright.bench.life.Life(stage, java.util.Optional.empty(), true)
        .after(Act.OPEN)
        .isPresent();
  }

  private void safe(Context context) {
    Typed typed = Typed.of(context);
    double left = number(typed.of("volts"), "what the output still held, in V");
    take(context, new Step.Safe(left, typed.of("note")), "Discharged, and read again.");
  }

  private void open(Context context) {
    if (!Typed.of(context).has("read", "yes")) {
      throw new Refused("Nobody has confirmed the cautions", "Read them, and tick that you have.");
    }
    take(context, new Step.Plain(Act.OPEN, ""), "It is open. Its seal and final test are void.");
  }

  /** Rows that were left empty say nothing; one that is half filled is asked back. */
  private void work(Context context) {
    Typed typed = Typed.of(context);
    List<Fitted> fitted = new ArrayList<>();
    for (int i = 1; i <= ROWS; i++) {
      String place = typed.of("place" + i);
      String lot = typed.of("lot" + i);
      if (place.isEmpty() != lot.isEmpty()) {
        throw new Refused(
            "Line " + i + " lacks its " + (place.isEmpty() ? "position" : "lot"),
            "Say where the part sits, as C1, and which lot it is from.");
      }
      if (!place.isEmpty()) {
        fitted.add(
            new Fitted(
                place, house.workshop().rebuilding().part(lot), lot, typed.of("removed" + i)));
      }
    }
    List<String> did =
        typed.of("did").lines().map(String::strip).filter(l -> !l.isEmpty()).toList();
    take(context, new Step.Work(did, fitted), "Written down.");
    drafts.done(Visitor.of(context).name(), "work-" + context.pathParam("tag"));
  }

  private void found(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.WORK);
    String tag = context.pathParam("tag");
    Typed typed = Typed.of(context);
    house.workshop().teardowns().confirm(tag, typed.of("group"), "", visitor.name());
    pages.notice(context, "What was found counts for the next unit.");
    Answers.go(context, "/rebuild/" + tag);
  }

  private void close(Context context) {
    take(context, new Step.Plain(Act.CLOSE, ""), "It is closed, and waits for its final test.");
  }

  private void sheet(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.WORK);
    Answers.go(
        context,
        Papers.href(
            house
                .workshop()
                .publishing()
                .write(Paperwork.TRAVELLER, context.pathParam("tag"), visitor.name())));
  }

  private void take(Context context, Step step, String said) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(step.act());
    String tag = context.pathParam("tag");
    house.workshop().ledger().lives().take(tag, step, visitor.name());
    pages.notice(context, said);
    Answers.go(context, "/rebuild/" + tag);
  }

  private static double number(String typed, String what) {
    try {
      return Double.parseDouble(typed.replace(',', '.'));
    } catch (NumberFormatException none) {
      throw new Refused("Nobody said " + what, "Give a number.");
    }
  }
}
