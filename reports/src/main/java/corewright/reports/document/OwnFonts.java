package corewright.reports.document;

import corewright.reports.chart.Type;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Answers every question for a font with our own. The layout asks for one that it never uses; the
 * library would look for it by reading all fonts of the computer, and keep a file about them.
 */
final class OwnFonts implements FontMapper {
  private final TrueTypeFont font = load();

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(
      String name, @Nullable PDFontDescriptor descriptor) {
    return new FontMapping<>(font, true);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(
      String name, @Nullable PDFontDescriptor descriptor) {
    return new FontMapping<>(font, true);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String name, @Nullable PDFontDescriptor descriptor, @Nullable PDCIDSystemInfo system) {
    return new CIDFontMapping(null, font, true);
  }

  private static TrueTypeFont load() {
    try (InputStream stream = Type.Face.REGULAR.open()) {
      return new TTFParser().parse(new RandomAccessReadBuffer(stream.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own font cannot be read", e);
    }
  }
}
