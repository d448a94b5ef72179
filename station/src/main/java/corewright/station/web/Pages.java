package corewright.station.web;

import corewright.station.web.door.Visitor;
import corewright.station.web.live.Glance;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** Shows pages: templates that were compiled with the program, each in its frame. */
public final class Pages {
  static final String PACKAGE = "corewright.station.web.pages";
  private static final String MODE = "corewright-mode";
  private static final int YEAR_S = 31_536_000;

  private final TemplateEngine engine =
      TemplateEngine.createPrecompiled(
          null, ContentType.Html, Pages.class.getClassLoader(), PACKAGE);
  private final Map<String, String> notices = new ConcurrentHashMap<>();
  private final Supplier<String> shop;
  private final Supplier<Glance> bench;

  Pages(Supplier<String> shop, Supplier<Glance> bench) {
    this.shop = shop;
    this.bench = bench;
  }

  /**
   * Shows a page of a place.
   *
   * @param template as {@code today.jte}; gets {@code frame} and the given model
   */
  public void show(Context context, PlaceName here, String template, Map<String, Object> model) {
    show(context, here, false, template, model);
  }

  /** Shows a page that drives or watches a bench. */
  public void showLive(Context context, String template, Map<String, Object> model) {
    show(context, PlaceName.BENCH, true, template, model);
  }

  private void show(
      Context context, PlaceName here, boolean live, String template, Map<String, Object> model) {
    Map<String, Object> all = new HashMap<>(model);
    all.put("frame", frame(context, here, live));
    bare(context, template, all);
  }

  /** Shows a page outside the places, as the one to sign in. */
  public void bare(Context context, String template, Map<String, Object> model) {
    StringOutput out = new StringOutput();
    engine.render(template, model, out);
    context.html(out.toString());
  }

  /** What the next page of this visitor says has just been done, a sentence. */
  public void notice(Context context, String sentence) {
    notices.put(Visitor.of(context).proof(), sentence);
  }

  private Frame frame(Context context, PlaceName here, boolean live) {
    Visitor visitor = Visitor.of(context);
    return new Frame(
        shop.get(),
        here,
        visitor.name(),
        visitor.roleWords(),
        visitor.proof(),
        mode(context),
        bench.get(),
        live,
        Objects.requireNonNullElse(notices.remove(visitor.proof()), ""),
        Objects.requireNonNullElse(context.queryParam("scanned"), ""));
  }

  private static String mode(Context context) {
    return "dark".equals(context.cookie(MODE)) ? "dark" : "light";
  }

  static void setMode(Context context) {
    String mode = "dark".equals(context.formParam("mode")) ? "dark" : "light";
    context.cookie(new Cookie(MODE, mode, "/", YEAR_S, false, true, null, SameSite.STRICT));
  }
}
