package corewright.station.web;

import corewright.bench.run.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The shop of the manual's pictures: what is done in it so that each page has something to show.
 */
final class ManualShop {
  static final String TO_RETURN = "U-000012";
  static final String TO_REBUILD = "U-00005T";
  static final String BENCH = "/bench/practice-sd48";

  /** What a page is shown with, by the name of its picture. */
  static final Map<String, String> PAGES = new LinkedHashMap<>();

  static {
    PAGES.put("today", "/");
    PAGES.put("counter", "/counter");
    PAGES.put("photograph", "/photograph/U-00007P");
    PAGES.put("which-build", "/build/U-00007P");
    PAGES.put("condition", "/build/U-00007P/condition");
    PAGES.put("bench", "/bench/emulated-sd48?tag=U-00004V");
    PAGES.put("benches", "/bench");
    PAGES.put("what-it-did", "/did/U-00003X");
    PAGES.put("what-it-did-void", "/did/U-00006R");
    PAGES.put("runs", "/did");
    PAGES.put("what-we-do", "/decide/U-00002Z");
    PAGES.put("waiting", "/decide");
    PAGES.put("rebuild", "/rebuild/U-00002Z");
    PAGES.put("store", "/rebuild");
    PAGES.put("hand-over", "/handover/" + TO_RETURN);
    PAGES.put("came-back", "/cameback");
    PAGES.put("the-shop", "/shop");
    PAGES.put("shop-found", "/shop/find?verdict=FAIL");
    PAGES.put("house-rules", "/rules");
    PAGES.put("family", "/rules/family/sd48");
    PAGES.put("checked", "/rules/check?file=profiles/families/sd48/sd48-ship.json");
    PAGES.put("practice", "/practice");
    PAGES.put("life", "/unit/U-00004V");
    PAGES.put("found", "/scan?code=4417");
    PAGES.put("refused", "/decide/U-99999");
  }

  private static final Pattern FIGURE = Pattern.compile("href=\"(/shop/behind[^\"]*)\"");

  private final Visit visit;
  private final Browser browser;

  ManualShop(Visit visit, Browser browser) {
    this.visit = visit;
    this.browser = browser;
  }

  String at(String path) {
    return visit.at(path);
  }

  /** A customer's log, a record and something else, dropped on a page. */
  Map<String, String> dropped() {
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("dropped-log", drop("drive.csv", DroppedTest.log("Output (V)")));
    pages.put("dropped-record", drop("bench.csv", HostileShop.weak()));
    pages.put("dropped-not", drop("notes.csv", "nothing of the kind"));
    return pages;
  }

  private String drop(String name, String text) {
    browser.go(at("/"));
    browser.driver().executeScript("bring(new File([arguments[0]], arguments[1]))", text, name);
    browser.until(() -> browser.driver().getCurrentUrl().contains("/dropped/"), "read");
    return browser.driver().getCurrentUrl();
  }

  /** A core that nobody has seen before. */
  String receive() {
    visit.get("/counter");
    String received = Visit.location(visit.post("/counter", core("4417-2911")));
    return received.substring(received.lastIndexOf('/') + 1);
  }

  private static Map<String, String> core(String serial) {
    return new LinkedHashMap<>(
        Map.of(
            "serial", serial,
            "label", "SD48-20 · 1507",
            "family", "sd48",
            "customer", "Tollgate Haulage",
            "mode", "repair",
            "grade", "B",
            "missing", "seal",
            "complaint", "Cuts out when it is hot."));
  }

  /** The units behind the first figure that there is. */
  String figure() {
    Matcher link = FIGURE.matcher(visit.get("/shop").body());
    if (!link.find()) {
      throw new IllegalStateException("the shop has no figure yet");
    }
    return link.group(1).replace("&amp;", "&");
  }

  /** A unit is opened, and parts go in. */
  void open() {
    visit.get("/rebuild");
    Visit.location(
        visit.post(
            "/rebuild",
            Map.of(
                "lot",
                "LOT-2231",
                "part",
                "Output capacitor",
                "quantity",
                "40",
                "supplier",
                "Tamar Components")));
    String unit = "/rebuild/" + TO_REBUILD;
    Visit.location(visit.post(unit + "/open", Map.of("read", "yes")));
    Visit.location(
        visit.post(
            unit + "/work",
            Map.of("place1", "C14", "lot1", "LOT-2231", "removed1", "1180 µF, 61 mΩ")));
  }

  /** A unit leaves, is claimed for, and comes back. */
  void claim() {
    visit.get("/handover/" + TO_RETURN);
    Visit.location(
        visit.post("/handover/" + TO_RETURN + "/ship", Map.of("carrier", "post", "tracking", "7")));
    Visit.location(
        visit.post(
            "/cameback",
            Map.of("unit", TO_RETURN, "symptom", "Dies when hot, on hills.", "hours", "120 h")));
    Map<String, String> back = core("4417-0312");
    back.put("unit", TO_RETURN);
    Visit.location(visit.post("/counter", back));
  }

  /** Somebody takes a unit to practise on, and enters what was read of it elsewhere. */
  String practise() {
    visit.get("/practice");
    String ready = Visit.location(visit.post("/practice/take", Map.of("family", "sd48")));
    String tag = ready.substring(ready.indexOf('=') + 1);
    visit.get(ready);
    prepare(tag, "sd48-final");
    visit.get(BENCH + "/hand");
    Map<String, String> read = new LinkedHashMap<>(Map.of("tag", tag, "profile", "sd48-final"));
    read.put("pins/value", "0");
    read.put("pins/instrument", "pin table 2");
    read.put("key-off/value", "1.2");
    read.put("key-off/expanded", "0.1");
    read.put("key-off/unit", "mA");
    read.put("key-off/instrument", "meter 4");
    Visit.location(visit.post(BENCH + "/hand", read));
    return tag;
  }

  /** The same unit on the bench, as slowly as a real one, and far enough to be looked at. */
  void run(String tag) {
    prepare(tag, "sd48-ship");
    Visit.location(visit.post(BENCH + "/start", Map.of()));
    browser.size(1366, 768);
    browser.go(at(BENCH));
    browser.until(
        () -> browser.text("#step").equals("Full load"), "far enough", Duration.ofMinutes(2));
    Clock.system().pause(Duration.ofSeconds(1));
  }

  void untilOver() {
    browser.until(() -> browser.one("#over").isDisplayed(), "over", Duration.ofMinutes(2));
    String next = browser.one("#over .btn").getDomAttribute("href");
    browser.until(() -> visit.get(next).statusCode() == 200, "kept", Duration.ofMinutes(1));
  }

  private void prepare(String tag, String profile) {
    visit.post(BENCH + "/prepare", Map.of("tag", tag, "profile", profile, "cautions", "yes"));
  }
}
