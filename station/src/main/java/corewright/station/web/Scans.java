package corewright.station.web;

import corewright.bench.life.Stage;
import corewright.reports.ledger.Found;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A scan, or a code typed by hand, opens the right place: a unit's life, or what was found; in
 * front of a bench it puts the unit on it.
 */
final class Scans implements Place {
  private static final Set<String> WHOLE = Set.of("tag", "serial");

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
    String from = Objects.requireNonNullElse(context.queryParam("from"), "");
    List<Found> found = house.workshop().ledger().find(code);
    Optional<Found> meant = meant(found);
    if (meant.isPresent()) {
      Found unit = meant.get();
      go(context, ScanWay.ofUnit(from, unit.tag(), stage(unit)), code, unit);
      return;
    }
    Optional<String> other =
        found.isEmpty() ? ScanWay.ofOther(from, code, isLot(code)) : Optional.empty();
    if (other.isPresent()) {
      context.redirect(other.get() + "&scanned=" + ScanWay.encoded("Scanned " + code + "."));
      return;
    }
    pages.show(context, PlaceName.TODAY, "found.jte", Map.of("code", code, "found", found));
  }

  /** The one whose whole tag or serial it is, whatever else reads like it; or the only one. */
  private static Optional<Found> meant(List<Found> found) {
    List<Found> whole = found.stream().filter(f -> WHOLE.contains(f.why())).toList();
    List<Found> left = whole.isEmpty() ? found : whole;
    return left.size() == 1 && !left.get(0).isGuess() ? Optional.of(left.get(0)) : Optional.empty();
  }

  private Stage stage(Found unit) {
    return house.workshop().ledger().lives().standing(unit.tag()).life().stage();
  }

  private boolean isLot(String code) {
    return house.workshop().ledger().stores().lots().stream()
        .anyMatch(l -> l.lot().equalsIgnoreCase(code));
  }

  private static void go(Context context, String to, String code, Found one) {
    String said = ScanWay.encoded("Scanned " + code + ": " + one.tag() + ".");
    context.redirect(to + (to.contains("?") ? "&" : "?") + "scanned=" + said);
  }
}
