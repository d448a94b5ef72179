package corewright.reports.chart;

import corewright.bench.log.LogReading;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;

/** Writes the picture of a customer's log as a file of its own. */
public final class LogCharts {
  /** Pixels for each unit of the drawing: 672 units are then wide enough for print. */
  private static final int FINE = 2;

  private LogCharts() {}

  /** Whether the file's name says which kind of picture it shall be. */
  public static boolean canWrite(Path file) {
    return kind(file).matches("svg|png");
  }

  private static String kind(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return name.substring(name.lastIndexOf('.') + 1);
  }

  /**
   * Writes one log, or the one from before above the one from after.
   *
   * @param file whose name ends in .svg or .png; what is there is written over
   * @throws IllegalArgumentException if it ends otherwise
   * @throws UncheckedIOException if it cannot be written
   */
  public static void write(List<LogReading> logs, Path file) {
    if (!canWrite(file)) {
      throw new IllegalArgumentException(file + " ends neither in .svg nor in .png");
    }
    LogPicture picture = new LogPicture(logs, Locale.ENGLISH);
    if (kind(file).equals("svg")) {
      Svg.write(picture::draw, LogPicture.WIDTH, picture.height(), picture.words(), file);
    } else {
      png(picture, file);
    }
  }

  private static void png(LogPicture picture, Path file) {
    BufferedImage image =
        new BufferedImage(
            FINE * LogPicture.WIDTH, FINE * picture.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.scale(FINE, FINE);
    g.setColor(Ink.PAPER);
    g.fillRect(0, 0, LogPicture.WIDTH, picture.height());
    picture.draw(g);
    g.dispose();
    try (OutputStream to = Files.newOutputStream(file)) {
      if (!ImageIO.write(image, "png", to)) {
        throw new IOException("no writer for it");
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the picture cannot be written to " + file, e);
    }
  }
}
