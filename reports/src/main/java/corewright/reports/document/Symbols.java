package corewright.reports.document;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.oned.Code128Writer;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Map;

/**
 * Symbols that a scanner reads, with their quiet zones. They hold a tag with its check character or
 * a code to check a document by, and never anything about a customer.
 *
 * @see "ISO/IEC 18004 (QR code), ISO/IEC 15417 (Code 128)"
 */
enum Symbols {
  /** A quarter of it may be soiled. */
  QR("qr:") {
    @Override
    BitMatrix modules(String text) throws WriterException {
      return new QRCodeWriter()
          .encode(
              text,
              BarcodeFormat.QR_CODE,
              0,
              0,
              Map.of(
                  EncodeHintType.MARGIN,
                  4,
                  EncodeHintType.ERROR_CORRECTION,
                  ErrorCorrectionLevel.Q));
    }
  },

  /** For scanners that read lines only. */
  BARS("bars:") {
    @Override
    BitMatrix modules(String text) {
      // The writer counts both quiet zones together: ten modules each.
      return new Code128Writer()
          .encode(text, BarcodeFormat.CODE_128, 0, 1, Map.of(EncodeHintType.MARGIN, 20));
    }
  };

  private final String prefix;

  Symbols(String prefix) {
    this.prefix = prefix;
  }

  abstract BitMatrix modules(String text) throws WriterException;

  /** The name under which {@link Drawings} knows the symbol of a text. */
  String named(String text) {
    return prefix + text;
  }

  /** Draws what {@link #named} names, if it names a symbol. */
  static boolean draw(Graphics2D g, String named, Rectangle2D area) {
    for (Symbols symbol : values()) {
      if (named.startsWith(symbol.prefix)) {
        symbol.drawn(g, named.substring(symbol.prefix.length()), area);
        return true;
      }
    }
    return false;
  }

  private void drawn(Graphics2D g, String text, Rectangle2D area) {
    BitMatrix modules;
    try {
      modules = modules(text);
    } catch (WriterException e) {
      throw new IllegalArgumentException("'" + text + "' does not go into a symbol", e);
    }
    double wide = area.getWidth() / modules.getWidth();
    double high = area.getHeight() / modules.getHeight();
    Path2D dark = new Path2D.Double();
    for (int y = 0; y < modules.getHeight(); y++) {
      for (int from = 0; from < modules.getWidth(); from++) {
        int to = from;
        while (to < modules.getWidth() && modules.get(to, y)) {
          to++;
        }
        if (to > from) {
          dark.append(
              new Rectangle2D.Double(
                  area.getX() + from * wide, area.getY() + y * high, (to - from) * wide, high),
              false);
          from = to;
        }
      }
    }
    g.setColor(Color.BLACK); // scanners want all the contrast there is
    g.fill(dark);
  }
}
