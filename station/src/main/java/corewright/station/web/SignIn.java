package corewright.station.web;

import corewright.station.web.door.Answers;
import corewright.station.web.door.Door;
import corewright.station.web.door.Onward;
import corewright.station.web.door.Visitor;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Objects;

/** The page to sign in. */
final class SignIn implements Place {
  private final House house;
  private final Pages pages;
  private final Door door;

  SignIn(House house, Pages pages, Door door) {
    this.house = house;
    this.pages = pages;
    this.door = door;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/in", this::show);
    routes.post("/in", this::enter);
  }

  private void show(Context context) {
    if (house.workshop().ledger().accounts().all().isEmpty()) {
      context.redirect("/first");
      return;
    }
    String to = Onward.to(Objects.requireNonNullElse(context.queryParam("to"), ""));
    if (Visitor.isIn(context)) {
      context.redirect(to, HttpStatus.SEE_OTHER);
      return;
    }
    pages.bare(
        context,
        "signin.jte",
        Map.of(
            "shop", house.workshop().shop().name(),
            "proof", door.gateProof(context),
            "to", to));
  }

  private void enter(Context context) {
    String name = Objects.requireNonNullElse(context.formParam("name"), "").strip();
    String password = Objects.requireNonNullElse(context.formParam("password"), "");
    door.enter(context, name, password.toCharArray());
    Answers.go(context, Onward.to(Objects.requireNonNullElse(context.formParam("to"), "")));
  }
}
