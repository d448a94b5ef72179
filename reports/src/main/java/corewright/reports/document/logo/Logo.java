package corewright.reports.document.logo;

import corewright.files.BadFile;
import corewright.files.Mistake;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The logo that heads a shop's documents: PNG, JPEG, or SVG of plain shapes. It is read when the
 * first document needs it, so that a bad one stops no bench.
 */
public final class Logo {
  /** Twice what a good scan of a letterhead takes. */
  static final long MOST_BYTES = 2_000_000;

  private final Path file;
  private Optional<Art> art = Optional.empty();

  private Logo(Path file) {
    this.file = file;
  }

  /** The logo in a file, which is not read yet. */
  public static Logo at(Path file) {
    return new Logo(file);
  }

  /** What is drawn. */
  interface Art {
    /** Width over height. */
    double aspect();

    /** Fills the rectangle. */
    void draw(Graphics2D g, Rectangle2D area);
  }

  /**
   * Width over height.
   *
   * @throws BadFile if it is none that can be used, with what to do
   */
  public double aspect() {
    return art().aspect();
  }

  /**
   * Draws it into a rectangle of its {@link #aspect}.
   *
   * @throws BadFile as {@link #aspect}
   */
  public void draw(Graphics2D g, Rectangle2D area) {
    art().draw(g, area);
  }

  private synchronized Art art() {
    if (art.isEmpty()) {
      art = Optional.of(read());
    }
    return art.get();
  }

  private Art read() {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw bad(
            file,
            0,
            "it has " + Files.size(file) + " bytes, and at most " + MOST_BYTES + " are read",
            "Save it smaller: 600 pixels across print sharply");
      }
      byte[] bytes = Files.readAllBytes(file);
      if (name.endsWith(".svg")) {
        return SvgReader.read(file, bytes);
      }
      if (name.endsWith(".png") || name.endsWith(".jpg") || name.endsWith(".jpeg")) {
        return Raster.read(file, bytes);
      }
    } catch (IOException e) {
      throw bad(
          file, 0, "it cannot be read", "See that it lies there, or take it out of shop.json");
    }
    throw bad(file, 0, "it is none of .png, .jpg, .svg", "Save it as one of them");
  }

  static BadFile bad(Path file, int line, String message, String remedy) {
    return new BadFile(List.of(new Mistake(file.toString(), line, "logo", message, remedy)));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Logo logo && logo.file.equals(file);
  }

  @Override
  public int hashCode() {
    return Objects.hash(file);
  }

  @Override
  public String toString() {
    return file.toString();
  }
}
