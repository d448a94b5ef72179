package corewright.reports.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Stroke;

/**
 * The colours and lines of paper: ink, copper for the output, and greys that carry nothing alone.
 */
final class Ink {
  static final Color PAPER = Color.WHITE;
  static final Color WINDOW = new Color(0xF0EFEA);
  static final Color INK = new Color(0x191D1B);
  static final Color INK2 = new Color(0x474D49);
  static final Color RULE = new Color(0x767B75);
  static final Color HAIR = new Color(0xC9C8C0);
  static final Color COPPER = new Color(0x8C3D12);

  /** Copper at 68 %, mixed here so that no document needs transparency for it. */
  static final Color COMB = new Color(0xAD7759);

  /** Ink at 30 %, for the teeth of an earlier run. */
  static final Color EARLIER_COMB = new Color(0xBABBBA);

  static final Stroke OUTPUT = new BasicStroke(2.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  static final Stroke EARLIER = dashed(2.2f, 8, 5);
  static final Stroke LATER = dashed(2.2f, 2.2f, 3.4f);
  static final Stroke TEETH = line(1);
  static final Stroke INPUT = new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  static final Stroke FLOOR = line(2.6f);
  static final Stroke FLOOR_TEETH = line(1.1f);
  static final Stroke JAW = line(1.3f);
  static final Stroke DIMENSION = line(1.1f);
  static final Stroke WITNESS = line(0.9f);
  static final Stroke MARK = line(1.6f);
  static final Stroke TICK = line(1.2f);
  static final Stroke HAIRLINE = line(1);
  static final Stroke HALO = new BasicStroke(4, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

  private Ink() {}

  static Stroke line(float width) {
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
  }

  private static Stroke dashed(float width, float on, float off) {
    float[] dashes = {on, off};
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0);
  }
}
