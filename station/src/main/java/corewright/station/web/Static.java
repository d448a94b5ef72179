package corewright.station.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Styles, scripts and fonts from within the program; only names that look like theirs are asked.
 */
final class Static implements Place {
  private static final Pattern NAME = Pattern.compile("(css|js|fonts)/[A-Za-z0-9-]+\\.[a-z0-9]+");
  private static final Map<String, String> TYPES =
      Map.of(
          "css", "text/css; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "svg", "image/svg+xml",
          "woff2", "font/woff2");

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/static/<name>", Static::send);
  }

  private static void send(Context context) {
    String name = context.pathParam("name");
    String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
    boolean known = NAME.matcher(name).matches() || name.equals("mark.svg");
    InputStream in = known && type != null ? Static.class.getResourceAsStream(name) : null;
    if (in == null) {
      context.status(HttpStatus.NOT_FOUND).result("There is no such file.");
      return;
    }
    try (in) {
      context
          .header("Cache-Control", "no-cache") // asked again after an update, answered by its tag
          .contentType(type)
          .result(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + name, e);
    }
  }
}
