package corewright.reports.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;

/** The one type family, as Java2D fonts; sizes in the unit of whatever is drawn on. */
public final class Type {
  /** Files beside this class with the family name that Java and documents know them by. */
  public enum Face {
    REGULAR("CorewrightSans-400.ttf", "Corewright Sans", 400),
    MEDIUM("CorewrightSans-500.ttf", "Corewright Sans Medium", 400),
    BOLD("CorewrightSans-700.ttf", "Corewright Sans", 700),
    EXTRA("CorewrightSans-800.ttf", "Corewright Sans ExtraBold", 400);

    private final String file;
    private final String family;
    private final int weight;

    Face(String file, String family, int weight) {
      this.file = file;
      this.family = family;
      this.weight = weight;
    }

    public String family() {
      return family;
    }

    /** CSS weight under which the face is known within its family. */
    public int weight() {
      return weight;
    }

    /** The TrueType file; whoever opens it closes it. */
    public InputStream open() {
      InputStream stream = Type.class.getResourceAsStream(file);
      if (stream == null) {
        throw new IllegalStateException("the font " + file + " is not in the program's jar");
      }
      return stream;
    }
  }

  private static final Font REGULAR = load(Face.REGULAR);
  private static final Font BOLD = load(Face.BOLD).deriveFont(Font.BOLD);
  private static final Font EXTRA = load(Face.EXTRA);

  private Type() {}

  /** Whether every weight has a glyph for a code point. */
  public static boolean canPrint(int codePoint) {
    return REGULAR.canDisplay(codePoint)
        && BOLD.canDisplay(codePoint)
        && EXTRA.canDisplay(codePoint);
  }

  static Font regular(double size) {
    return REGULAR.deriveFont((float) size);
  }

  static Font bold(double size) {
    return BOLD.deriveFont((float) size);
  }

  static Font extra(double size) {
    return EXTRA.deriveFont((float) size);
  }

  private static Font load(Face face) {
    try (InputStream stream = face.open()) {
      return Font.createFont(Font.TRUETYPE_FONT, stream);
    } catch (IOException | FontFormatException e) {
      throw new IllegalStateException("the font " + face.file + " cannot be read", e);
    }
  }
}
