package corewright.reports.chart;

import corewright.bench.log.Dot;
import corewright.bench.log.LogFamily;
import corewright.bench.log.LogReading;
import corewright.bench.log.Trace;
import corewright.bench.log.table.Role;
import corewright.measures.Measurement;
import corewright.profiles.InputZones;
import corewright.profiles.Limit;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;

/** Cranks side by side on common scales: output, supply and engine speed over each one's time. */
final class LogBand {
  private static final double TOP = 78;
  private static final double OUTPUT = 150;
  private static final double SUPPLY = 84;
  private static final double SPEED = 34;
  private static final double GAP = 22;
  private static final double AXIS = 26;
  private static final double APART = 16;

  /** What a band takes, whatever is in it. */
  static final double HEIGHT = TOP + OUTPUT + GAP + SUPPLY + GAP + SPEED + AXIS;

  private final LogReading log;
  private final List<LogStrip> strips;
  private final Words words;
  private final Span output;
  private final Span supply;
  private final Span speed;

  LogBand(LogReading log, List<LogStrip> strips, Words words) {
    this.log = log;
    this.strips = List.copyOf(strips);
    this.words = words;
    DoubleStream limits =
        log.family()
            .map(f -> DoubleStream.of(f.output_V(), f.faultBelow_V()))
            .orElse(DoubleStream.empty());
    this.output = Scales.padded(DoubleStream.concat(values(Role.OUTPUT), limits), 1);
    DoubleStream edges =
        zones()
            .map(z -> DoubleStream.of(z.tolerated_V() - 1, z.good_V() + 2))
            .orElse(DoubleStream.empty());
    this.supply = Scales.padded(DoubleStream.concat(values(Role.SUPPLY), edges), 1);
    double fastest = values(Role.SPEED).max().orElse(0);
    this.speed = new Span(-0.05 * fastest, Math.max(100, 1.15 * fastest));
  }

  private Optional<InputZones> zones() {
    return strips.stream().flatMap(s -> s.zones().stream()).findFirst();
  }

  private DoubleStream values(Role role) {
    return strips.stream()
        .flatMap(s -> s.traces().stream())
        .filter(t -> t.role() == role)
        .flatMap(t -> t.dots().stream())
        .mapToDouble(Dot::value);
  }

  void draw(Graphics2D g, double top, double width) {
    double room = width - LaneChart.LEFT - LaneChart.RIGHT - APART * (strips.size() - 1);
    double seconds = strips.stream().mapToDouble(s -> s.time_s().length()).sum();
    double x = LaneChart.LEFT;
    for (int i = 0; i < strips.size(); i++) {
      double wide = room * strips.get(i).time_s().length() / seconds;
      new Drawn(g, strips.get(i), x, top, wide, i == 0).all();
      x += wide + APART;
    }
    LogKey key = new LogKey(g, words, width - LaneChart.RIGHT + 12);
    double y = top + TOP;
    key.names(titles(Role.OUTPUT), "lane.output", Ink.COPPER, y + 4);
    y += OUTPUT + GAP;
    Rectangle2D lane = new Rectangle2D.Double(0, y, width, SUPPLY);
    double below = key.names(titles(Role.SUPPLY), "lane.input", Ink.INK, y - 4);
    zones().ifPresent(z -> key.zones(z, lane, supply, below));
    key.names(titles(Role.SPEED), "lane.speed", Ink.INK2, y + SUPPLY + GAP + 4);
  }

  private List<String> titles(Role role) {
    Set<String> titles = new LinkedHashSet<>();
    strips.stream()
        .flatMap(s -> s.traces().stream())
        .filter(t -> t.role() == role)
        .forEach(t -> titles.add(t.title()));
    return new ArrayList<>(titles);
  }

  /** One strip while it is drawn. */
  private final class Drawn {
    private final Graphics2D g;
    private final Dimensions d;
    private final LogStrip strip;
    private final boolean first;
    private final RuleAxis time;
    private final Rectangle2D area;

    Drawn(Graphics2D g, LogStrip strip, double x, double top, double width, boolean first) {
      this.g = g;
      this.d = new Dimensions(g);
      this.strip = strip;
      this.first = first;
      this.time = new RuleAxis(strip.time_s(), List.of());
      this.area = new Rectangle2D.Double(x, top + TOP, width, OUTPUT);
    }

    void all() {
      double x = area.getX();
      d.text(strip.title(), x, area.getY() - 62, Type.bold(14), Ink.INK);
      d.text(strip.said(), x, area.getY() - 46, Type.regular(13), Ink.INK2);
      Lane out = lane(area.getY(), OUTPUT, output);
      output(out);
      double below = area.getMaxY() + GAP;
      supply(lane(below, SUPPLY, supply));
      Lane turning = lane(below + SUPPLY + GAP, SPEED, speed);
      dots(turning, Role.SPEED, Ink.INK2, 1.4);
      fastest(turning);
      axis(turning);
    }

    private Lane lane(double top, double height, Span values) {
      return new Lane(
          new Rectangle2D.Double(area.getX(), top, area.getWidth(), height),
          time,
          new RuleAxis(values, List.of()));
    }

    private void output(Lane lane) {
      strip.judged().ifPresent(w -> Backdrop.ground(g, lane, w));
      scale(lane, Scales.outputMarks(output, OUTPUT, words.numerals()), true);
      dots(lane, Role.OUTPUT, Ink.COPPER, 2.8);
      boolean silent = strip.low().isPresent();
      if (silent) {
        strip.judged().ifPresent(w -> Picture.veil(g, lane.between(w)));
      }
      log.family().ifPresent(f -> floor(lane, f));
      strip.judged().ifPresent(w -> jaws(lane, w));
      strip
          .judged()
          .filter(w -> !silent && strip.quarter().isPresent())
          .ifPresent(w -> quarter(lane, w, strip.quarter().orElseThrow()));
    }

    private void floor(Lane lane, LogFamily family) {
      Span where = strip.judged().orElse(strip.time_s());
      double y = lane.y(family.faultBelow_V());
      d.floor(lane.x(where.from()), lane.x(where.to()), y, Limit.Side.AT_LEAST);
      if (first) {
        String limit =
            words.get("limit", Words.tied(words.numerals().plain(family.faultBelow_V()) + " V"));
        d.textOnCurves(limit, lane.area().getX() + 3, y + 21, Type.bold(13));
      }
    }

    private void jaws(Lane lane, Span window) {
      double top = lane.area().getY() - 16;
      d.jaw(lane.x(window.from()), top, lane.area().getMaxY(), 1);
      d.jaw(lane.x(window.to()), top, lane.area().getMaxY(), -1);
    }

    private void quarter(Lane lane, Span window, Measurement quarter) {
      d.witness(lane.x(window.from()), lane.x(window.to()), lane.y(quarter.value()));
      String reading = words.get("log.quarter", Words.tied(words.numerals().withU(quarter)));
      d.text(reading, area.getX(), area.getY() - 30, Type.regular(13), Ink.INK2);
    }

    private void supply(Lane lane) {
      strip.zones().ifPresent(z -> Backdrop.zones(g, lane, z, supply));
      scale(lane, Scales.outputMarks(supply, SUPPLY, words.numerals()), false);
      dots(lane, Role.SUPPLY, Ink.INK, 2.2);
      strip
          .low()
          .ifPresent(p -> d.label(lane.x(p.time_s()), lane.y(p.value_V()), p.words(), lane.area()));
    }

    private void scale(Lane lane, List<RuleAxis.Mark> marks, boolean lines) {
      for (RuleAxis.Mark mark : marks) {
        double y = lane.y(mark.value());
        if (lines) {
          d.hair(lane.area().getX(), lane.area().getMaxX(), y);
        }
        if (first) {
          d.textBefore(mark.words(), lane.area().getX() - 7, y + 4, Type.regular(13), Ink.INK2);
        }
      }
    }

    private void fastest(Lane lane) {
      double fastest = values(Role.SPEED).max().orElse(0);
      if (first && fastest > 0) {
        String most = words.numerals().plain(Math.rint(fastest));
        double y = lane.y(fastest) + 4;
        d.textBefore(most, lane.area().getX() - 7, y, Type.regular(13), Ink.INK2);
      }
    }

    private void dots(Lane lane, Role role, Color colour, double radius) {
      int place = 0;
      List<String> titles = titles(role);
      for (Trace trace : strip.traces()) {
        if (trace.role() == role) {
          place = Math.max(0, titles.indexOf(trace.title()));
          new Dots(g).draw(trace, lane, place, colour, radius, strip::judges);
        }
      }
    }

    private void axis(Lane lane) {
      double y = lane.area().getMaxY();
      d.rule(lane.area().getX(), lane.area().getMaxX(), y);
      for (RuleAxis.Mark mark :
          Scales.timeMarks(strip.time_s(), lane.area().getWidth(), words.numerals())) {
        double x = lane.x(mark.value());
        d.tick(x, y, mark.words().isEmpty() ? 4 : 6);
        double half = d.width(mark.words(), Type.regular(13)) / 2;
        d.text(mark.words(), x - half, y + 19, Type.regular(13), Ink.INK2);
      }
    }
  }
}
