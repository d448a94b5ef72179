package corewright.reports.document;

import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;

/**
 * A QR code to be drawn on a screen, with its quiet zone of four modules.
 *
 * @param modules its width and height
 * @param path what is dark in it, as the path of an SVG of that size
 * @see "ISO/IEC 18004; SVG 1.1, 8.3"
 */
public record QrDrawing(int modules, String path) {

  /** The code of a text, as an address. A quarter of it may be covered. */
  public static QrDrawing of(String text) {
    BitMatrix matrix;
    try {
      matrix = Symbols.QR.modules(text);
    } catch (WriterException e) {
      throw new IllegalArgumentException("'" + text + "' does not go into a symbol", e);
    }
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < matrix.getHeight(); y++) {
      for (int x = 0; x < matrix.getWidth(); x++) {
        if (matrix.get(x, y)) {
          path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
        }
      }
    }
    return new QrDrawing(matrix.getWidth(), path.toString());
  }
}
