package corewright.station.web;

import corewright.reports.ledger.Found;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * A scan, or a code typed by hand, opens the right place: a unit's life, or what was found; in
 * front of a bench it puts the unit on it.
 */
final class Scans implements Place {
  private static final Pattern AT_A_BENCH = Pattern.compile("/bench/[A-Za-z0-9_-]+");

  private final House house;
  private final Pages pages;

  Scans(House house, Pages pages) {
    this.house = house;
    this.pages = pages;
  }

  @Override
  public void answer(RoutesConfig routes) {
    routes.get("/scan", this::scanned);
  }

  private void scanned(Context context) {
    String code = Objects.requireNonNullElse(context.queryParam("code"), "").strip();
    if (code.isEmpty()) {
      context.redirect("/");
      return;
    }
    List<Found> found = house.workshop().ledger().find(code);
    if (found.size() == 1 && !found.get(0).isGuess()) {
      Found one = found.get(0);
      String from = Objects.requireNonNullElse(context.queryParam("from"), "");
      boolean atBench = AT_A_BENCH.matcher(from).matches();
      context.redirect(
          atBench
              ? from + "?tag=" + one.tag() + "&scanned=" + said(code, one)
              : "/unit/" + one.tag() + "?scanned=" + said(code, one));
      return;
    }
    pages.show(context, PlaceName.TODAY, "found.jte", Map.of("code", code, "found", found));
  }

  private static String said(String code, Found one) {
    return URLEncoder.encode("Scanned " + code + ": " + one.tag() + ".", StandardCharsets.UTF_8);
  }
}
