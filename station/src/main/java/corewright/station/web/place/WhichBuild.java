package corewright.station.web.place;

import corewright.bench.identify.Identifier;
import corewright.bench.life.Act;
import corewright.bench.life.Stage;
import corewright.profiles.Cue;
import corewright.station.web.House;
import corewright.station.web.Pages;
import corewright.station.web.Place;
import corewright.station.web.PlaceName;
import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import corewright.station.work.Given;
import corewright.station.work.Looking;
import corewright.station.work.Photographs.Taken;
import corewright.station.work.Refused;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Which one is it? One question at a time, the one that tells most first. */
final class WhichBuild implements Place {
  private static final Map<Stage, String> WAIT = new LinkedHashMap<>();

  static {
    WAIT.put(Stage.RECEIVED, "See which build");
    WAIT.put(Stage.IDENTIFIED, "Look again");
  }

  private final House house;
  private final Pages pages;
  private final PhotoDesk photos;

  WhichBuild(House house, Pages pages) {
    this.house = house;
    this.pages = pages;
    this.photos = new PhotoDesk(house);
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get(
        "/build",
        c -> Queue.show(c, house, pages, PlaceName.WHICH_BUILD, "Which build is it?", WAIT));
    routes.get("/build/{tag}", this::show);
    routes.post("/build/{tag}", this::answered);
  }

  private void show(Context context) {
    Looking.Standing standing = house.workshop().looking().standing(context.pathParam("tag"));
    Optional<Cue> again =
        Optional.ofNullable(context.queryParam("cue")).map(id -> cue(standing, id));
    pages.show(
        context,
        PlaceName.WHICH_BUILD,
        "build.jte",
        Map.of(
            "model",
            BuildPage.of(house.workshop(), standing, again.isPresent() ? again : standing.next())));
  }

  private void answered(Context context) {
    Visitor visitor = Visitor.of(context);
    visitor.mustBeAllowed(Act.IDENTIFY);
    Typed typed = Typed.of(context);
    String tag = context.pathParam("tag");
    Looking.Standing standing = house.workshop().looking().standing(tag);
    Cue cue = cue(standing, typed.of("cue"));
    String said = typed.of("answer").isEmpty() ? typed.of("read") : typed.of("answer");
    check(cue, said, typed.has("keep", "yes"));
    try (PhotoDesk.Pile pile = photos.take(context, "photo-cue", cue.id())) {
      Optional<Path> photo = pile.photos().stream().findFirst().map(Taken::file);
      house
          .workshop()
          .looking()
          .save(tag, cue.id(), Given.of(Optional.of(cue), said, photo), visitor.name());
    }
    pages.notice(context, "Written down: " + said + ".");
    Answers.go(context, "/build/" + tag);
  }

  /** A number or date that cannot be is a finding or a slip: only the person can say which. */
  private void check(Cue cue, String said, boolean keep) {
    if (said.isEmpty()) {
      throw new Refused(
          "Nothing was answered", "Choose or type what is there, or say: cannot tell.");
    }
    boolean chosen = cue.answers().contains(said) || said.equals(Identifier.NOT_SEEN);
    if (chosen) {
      return;
    }
    if (cue.scale().isEmpty()) {
      throw new Refused(
          "'" + said + "' is no answer to '" + cue.id() + "'",
          "Possible are " + String.join(", ", cue.answers()) + ".");
    }
    String doubt = Identifier.doubt(cue, said, house.clock().wall());
    if (!doubt.isEmpty() && !keep) {
      throw new Refused(
          said + " would count for nothing: " + doubt,
          "If that is what stands there, tick 'keep it as it was read' and send it again.");
    }
  }

  private static Cue cue(Looking.Standing standing, String id) {
    return standing.family().cues().stream()
        .filter(c -> c.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "Nothing is asked by the name '" + id + "' of " + standing.family().id(),
                    "Go back to the unit's page."));
  }
}
