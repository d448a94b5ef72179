package corewright.reports.chart;

import corewright.bench.log.LogReading;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A customer's log as it is: every sample a dot, the supply in its zones, the output over its
 * limit, a strip of time for each crank. Of two logs the later one lies below.
 */
public final class LogPicture {
  /** As wide as the picture of a run, so that both stand on one page. */
  public static final int WIDTH = Picture.WIDTH;

  private static final int ABREAST = 3;
  private static final double HEAD = 46;
  private static final double BETWEEN = 18;

  private final List<LogReading> logs;
  private final Words words;
  private final List<Block> blocks = new ArrayList<>();

  /** The strips of one row, and the sentence over the first row of a log. */
  private record Block(LogReading log, String sentence, List<LogStrip> strips) {
    double height() {
      return (sentence.isEmpty() ? 0 : HEAD) + LogBand.HEIGHT + BETWEEN;
    }
  }

  public LogPicture(List<LogReading> logs, Locale locale) {
    this.logs = List.copyOf(logs);
    this.words = Words.of(LogPicture.class, locale);
    for (int n = 0; n < logs.size(); n++) {
      LogReading log = logs.get(n);
      String which = logs.size() == 1 ? "" : words.get(n == 0 ? "log.before" : "log.after") + " ";
      List<LogStrip> strips = LogStrip.of(log, words);
      for (int i = 0; i < strips.size(); i += ABREAST) {
        blocks.add(
            new Block(
                log,
                i == 0 ? which + sentence(log) : "",
                strips.subList(i, Math.min(strips.size(), i + ABREAST))));
      }
    }
  }

  public int height() {
    return (int) Math.ceil(blocks.stream().mapToDouble(Block::height).sum());
  }

  /** What it shows, for readers who do not see it. */
  public String words() {
    return String.join(" ", logs.stream().map(this::sentence).toList());
  }

  private String sentence(LogReading log) {
    return words.get("log.says", words.get("log.says." + log.conclusion().id()));
  }

  /** Draws everything into the rectangle from (0, 0) to ({@link #WIDTH}, {@link #height}). */
  public void draw(Graphics2D g) {
    Dimensions d = new Dimensions(g);
    double y = 0;
    for (Block block : blocks) {
      double top = y;
      if (!block.sentence.isEmpty()) {
        d.text(block.sentence, 4, top + 26, Type.extra(19), Ink.INK);
        top += HEAD;
      }
      new LogBand(block.log, block.strips, words).draw(g, top, WIDTH);
      y += block.height();
    }
  }
}
