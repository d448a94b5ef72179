package corewright.reports.chart;

import java.awt.AlphaComposite;
import java.awt.Composite;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;

/**
 * The picture of a run, drawn as a machinist draws a part: the output hangs over its floor, the
 * jaws close on what was judged, the mean is dimensioned against the limit, the input runs below
 * through its zones, the load at the bottom, all on one time axis.
 */
public final class Picture {
  /** Width that the strokes and the type are made for. */
  public static final int WIDTH = 672;

  private static final float VEIL = 0.72f;

  private final Scene scene;
  private final Words words;

  Picture(Scene scene, Locale locale) {
    this.scene = scene;
    this.words = Words.of(Picture.class, locale);
  }

  /** Draws the picture into the rectangle from (0, 0) to ({@link #WIDTH}, {@code height}). */
  public void draw(Graphics2D g, int height) {
    List<Lane> lanes = new LaneChart(scene, words, WIDTH, height).draw(g, WIDTH, height);
    Dimensions d = new Dimensions(g);
    Lane output = lanes.get(0);
    title(d, output, "lane.output");
    if (scene.silent()) {
      scene.judged().forEach(window -> veil(g, output.between(window)));
      if (scene.emulated()) {
        Backdrop.emulatedOverHatch(g, words, output.area());
      }
    }
    scene.headline().ifPresent(headline -> headline(d, output, headline));
    if (!scene.inputs().isEmpty()) {
      input(d, lanes.get(1));
    }
    scene.load().ifPresent(load -> load(d, lanes.get(lanes.size() - 1), load));
  }

  private void headline(Dimensions d, Lane lane, Scene.Headline headline) {
    Rectangle2D area = lane.area();
    double limit = lane.y(headline.limit_V());
    for (Span floor : headline.floors()) {
      d.floor(
          Math.max(area.getX(), lane.x(floor.from()) - 14),
          Math.min(area.getMaxX(), lane.x(floor.to()) + 14),
          limit,
          headline.side());
    }
    Rectangle2D window = lane.between(headline.window());
    limitWords(d, lane, headline, limit);
    double top = area.getY() - 20;
    d.jaw(window.getX(), top, area.getMaxY(), 1);
    d.jaw(window.getMaxX(), top, area.getMaxY(), -1);
    judged(d, headline, window, area, top + 8);
    headline
        .mean_V()
        .filter(mean -> !scene.silent())
        .ifPresent(mean -> mean(d, lane, headline, lane.y(mean), limit));
  }

  /** Between the jaws if there is room, else outside, where there is most of it. */
  private void judged(
      Dimensions d, Scene.Headline headline, Rectangle2D window, Rectangle2D area, double y) {
    Font font = Type.regular(14);
    String said = said(headline);
    double width = d.width(said, font);
    if (window.getWidth() > width + 60) {
      d.along(window.getX() + 3, window.getMaxX() - 3, y);
      d.textOver(said, window.getCenterX(), y + 5, font);
    } else if (window.getCenterX() > area.getCenterX()) {
      d.textBefore(said, window.getX() - 22, y + 5, font, Ink.INK);
    } else {
      d.text(said, window.getMaxX() + 22, y + 5, font, Ink.INK);
    }
  }

  private String said(Scene.Headline headline) {
    if (scene.silent()) {
      return words.get(scene.lowPoint().isPresent() ? "not-judged.input" : "not-judged");
    }
    Span window = headline.window();
    int decimals = Math.max(decimals(window.from()), decimals(window.to()));
    return words.get("judged", seconds(window.from(), decimals), seconds(window.to(), decimals));
  }

  /** At the left end of the first floor, on the side where the curve is not. */
  private static void limitWords(Dimensions d, Lane lane, Scene.Headline headline, double y) {
    Font font = Type.bold(14);
    String said = headline.limitWords();
    double floorX = lane.x(headline.floors().get(0).from()) - 20;
    if (floorX - d.width(said, font) > lane.area().getX()) {
      d.textOnCurves(said, floorX - d.width(said, font), y + 5, font);
    } else {
      d.textOnCurves(said, Math.max(floorX + 20, lane.area().getX()) + 4, y + 21, font);
    }
  }

  private static void mean(
      Dimensions d, Lane lane, Scene.Headline headline, double mean, double limit) {
    double right = lane.area().getMaxX();
    double x = right + 40;
    d.witness(lane.x(headline.window().to()) + 6, x + 10, mean);
    d.witness(right - 8, x + 10, limit);
    d.upright(x, Math.min(mean, limit), Math.max(mean, limit));
    double top = Math.min(mean, limit);
    double room = Math.abs(mean - limit);
    boolean meanAbove = mean <= limit;
    double middle = (mean + limit) / 2;
    Font figure = Type.extra(17);
    Font distance = Type.regular(14);
    if (room >= 26) {
      d.text(headline.reading(), x + 16, meanAbove ? top - 3 : mean + 18, figure, Ink.INK);
      d.text(headline.margin(), x + 16, middle + 5, distance, Ink.INK);
    } else {
      double first = Math.max(middle - 6, 14);
      d.text(headline.reading(), x + 16, first, figure, Ink.INK);
      d.text(headline.margin(), x + 16, first + 18, distance, Ink.INK);
    }
  }

  private void input(Dimensions d, Lane lane) {
    title(d, lane, "lane.input");
    double right = lane.area().getMaxX() + 10;
    Font font = Type.regular(13);
    scene
        .zones()
        .ifPresent(
            zones -> {
              double good = lane.y(zones.good_V());
              double tolerated = lane.y(zones.tolerated_V());
              double valid = Math.min(good - 4, (lane.area().getY() + good) / 2 + 5);
              double middle = Math.max((good + tolerated) / 2 + 4, valid + 13);
              volts(d, lane, zones.good_V(), Math.min(4, (tolerated - good) / 2 - 1.5));
              volts(d, lane, zones.tolerated_V(), Math.max(4, 11.5 - (tolerated - good) / 2));
              d.text(words.get("zone.valid"), right, valid, font, Ink.INK2);
              d.text(words.get("zone.tolerated"), right, middle, font, Ink.INK2);
              d.text(
                  words.get("zone.void"),
                  right,
                  Math.max((tolerated + lane.area().getMaxY()) / 2 + 4, middle + 13),
                  font,
                  Ink.INK2);
            });
    scene
        .lowPoint()
        .ifPresent(
            low -> d.label(lane.x(low.time_s()), lane.y(low.value_V()), low.words(), lane.area()));
  }

  /** The figure of a zone's edge, moved so far down that it does not touch its neighbour. */
  private void volts(Dimensions d, Lane lane, double edge_V, double down) {
    double x = lane.area().getX() - 7;
    d.textBefore(
        words.numerals().plain(edge_V), x, lane.y(edge_V) + down, Type.regular(13), Ink.INK2);
  }

  private void load(Dimensions d, Lane lane, Trace load) {
    title(d, lane, "lane.load");
    double highest = load.highestMean();
    if (Double.isFinite(highest)) {
      String most = Words.tied(words.numerals().plain(Math.round(highest * 100) / 100.0) + " A");
      double y = Math.max(lane.y(highest) + 4, lane.area().getY() + 8);
      d.text(most, lane.area().getMaxX() + 10, y, Type.regular(13), Ink.INK2);
    }
  }

  private void title(Dimensions d, Lane lane, String key) {
    d.text(
        words.get(key),
        lane.area().getX(),
        lane.area().getY() - (key.equals("lane.output") ? 12 : 5),
        Type.bold(14),
        Ink.INK);
  }

  /** Over a window of which nothing can be said. */
  static void veil(Graphics2D g, Rectangle2D window) {
    Composite before = g.getComposite();
    g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, VEIL));
    g.setColor(Ink.PAPER);
    g.fill(window);
    g.setComposite(before);
    g.setColor(Ink.RULE);
    Hatch.lines(g, window, 12.7, 2);
  }

  /** Both ends of a window are said to the same digit, a millisecond at the finest. */
  private String seconds(double s, int decimals) {
    return words.numerals().number(s, decimals);
  }

  private static int decimals(double s) {
    long milliseconds = Math.round(s * 1000);
    int decimals = 3;
    while (decimals > 0 && milliseconds % 10 == 0) {
      milliseconds /= 10;
      decimals--;
    }
    return decimals;
  }
}
