package corewright.station.web;

import corewright.bench.life.Stage;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a scan leads from the page on which it was made: at a place of a core's way the next unit
 * comes to that place, a lot to the rebuild that is open, a new serial to the counter, a seal to
 * the unit that is handed over. Pure.
 */
final class ScanWay {
  private static final Pattern PLACE =
      Pattern.compile(
          "/(counter|build|decide|rebuild|handover|cameback)(?:/([A-Za-z0-9._-]{1,40}))?(?:[/?].*)?");

  /** As the ledger numbers quotes; it stands on the parcel. */
  private static final Pattern QUOTE = Pattern.compile("[Rr]-[0-9]{5,}[0-9A-Za-z]?");

  private static final Pattern BENCH = Pattern.compile("(/bench/[A-Za-z0-9_-]+)(?:\\?.*)?");

  private ScanWay() {}

  /** A unit that was scanned. */
  static String ofUnit(String from, String tag, Stage stage) {
    Matcher bench = BENCH.matcher(from);
    if (bench.matches()) {
      return bench.group(1) + "?tag=" + tag;
    }
    Matcher place = PLACE.matcher(from);
    if (!place.matches()) {
      return "/unit/" + tag;
    }
    if (!place.group(1).equals("counter")) {
      return "/" + place.group(1) + "/" + tag;
    }
    return stage == Stage.SHIPPED ? "/counter?tag=" + tag : "/counter/" + tag;
  }

  /**
   * Something else that was scanned; empty where the page has no use for it.
   *
   * @param lot whether it is a lot in store
   */
  static Optional<String> ofOther(String from, String code, boolean lot) {
    Matcher place = PLACE.matcher(from);
    if (!place.matches()) {
      return Optional.empty();
    }
    String at = "/" + place.group(1) + (place.group(2) == null ? "" : "/" + place.group(2));
    return switch (place.group(1)) {
      case "counter" ->
          Optional.of(
              "/counter?" + (QUOTE.matcher(code).matches() ? "quote=" : "serial=") + encoded(code));
      case "rebuild" -> lot ? Optional.of(at + "?lot=" + encoded(code)) : Optional.empty();
      case "handover" ->
          place.group(2) == null ? Optional.empty() : Optional.of(at + "?seal=" + encoded(code));
      default -> Optional.empty();
    };
  }

  static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
