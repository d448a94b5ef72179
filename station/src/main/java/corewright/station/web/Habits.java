package corewright.station.web;

import corewright.station.web.door.Answers;
import corewright.station.web.door.Visitor;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What pages do on the side: keep drafts, and turn dark. */
final class Habits implements Place {
  private final Drafts drafts;

  Habits(Drafts drafts) {
    this.drafts = drafts;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.post("/draft/{form}", this::keep);
    routes.post("/mode", Habits::mode);
  }

  private void keep(Context context) {
    Map<String, List<String>> fields = new HashMap<>(context.formParamMap());
    fields.remove("proof");
    drafts.keep(Visitor.of(context).name(), context.pathParam("form"), fields);
    context.status(HttpStatus.NO_CONTENT);
  }

  private static void mode(Context context) {
    Pages.setMode(context);
    String from = Objects.requireNonNullElse(context.header("Referer"), "");
    int path = from.indexOf('/', from.indexOf("://") + 3);
    Answers.go(context, path > 0 ? from.substring(path) : "/");
  }
}
