package corewright.reports.document;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import corewright.reports.chart.Type;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.w3c.dom.Document;

/**
 * Turns a page into a PDF that lasts and that a screen reader can read: fonts inside, tagged.
 *
 * @see "ISO 19005-3, PDF/A-3a; ISO 14289-1, PDF/UA-1"
 */
final class Pdf {
  private static final byte[] SRGB = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

  /** It warns of the font that stands in; held here, or its level would be forgotten with it. */
  private static final Logger FONTS = Logger.getLogger("org.apache.pdfbox.pdmodel.font");

  static {
    FONTS.setLevel(Level.SEVERE);
    FontMappers.set(new OwnFonts());
    XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.SEVERE));
  }

  private Pdf() {}

  static byte[] of(Document page, Drawings drawings) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PdfBoxRenderer renderer = builder(page, drawings).toStream(bytes).buildPdfRenderer()) {
      renderer.layout();
      renderer.createPDF();
    } catch (IOException e) {
      throw new UncheckedIOException("the document cannot be written", e);
    }
    return bytes.toByteArray();
  }

  /** Writes a finished document; its folder is made if missing. */
  static Path keep(byte[] pdf, Path file) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      return Files.write(file, pdf);
    } catch (IOException e) {
      throw new UncheckedIOException("the document " + file + " cannot be written", e);
    }
  }

  /** Where the element with this id begins, in mm from the top of the first page's content. */
  static double top_mm(Document page, String id) {
    try (PdfBoxRenderer renderer =
        builder(page, Drawings.NONE).toStream(OutputStream.nullOutputStream()).buildPdfRenderer()) {
      renderer.layout();
      Box box = renderer.getSharedContext().getBoxById(id);
      return box.getAbsY() / renderer.getDotsPerPoint() / 72 * 25.4;
    }
  }

  private static PdfRendererBuilder builder(Document page, Drawings drawings) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    DefaultObjectDrawerFactory objects = new DefaultObjectDrawerFactory();
    objects.registerDrawer(Drawings.TYPE, drawings);
    builder.useObjectDrawerFactory(objects);
    for (Type.Face face : Type.Face.values()) {
      builder.useFont(face::open, face.family(), face.weight(), FontStyle.NORMAL, true);
    }
    builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
    builder.usePdfUaAccessibility(true);
    builder.useColorProfile(SRGB.clone());
    builder.useExternalResourceAccessControl(
        (uri, type) -> false,
        com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority
            .RUN_BEFORE_RESOLVING_URI);
    builder.withProducer("Corewright");
    builder.withW3cDocument(page, "");
    return builder;
  }
}
