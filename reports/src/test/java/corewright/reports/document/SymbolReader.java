package corewright.reports.document;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A scanner: sees the first page of a document as dots and reads one kind of symbol in it. */
final class SymbolReader {
  private SymbolReader() {}

  static String read(Path pdf, BarcodeFormat format, int dpi) throws IOException {
    BufferedImage image = image(pdf, dpi);
    int[] dots = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    BinaryBitmap seen =
        new BinaryBitmap(
            new HybridBinarizer(new RGBLuminanceSource(image.getWidth(), image.getHeight(), dots)));
    try {
      return new MultiFormatReader()
          .decode(
              seen,
              Map.of(
                  DecodeHintType.POSSIBLE_FORMATS,
                  List.of(format),
                  DecodeHintType.TRY_HARDER,
                  true))
          .getText();
    } catch (NotFoundException e) {
      return "nothing";
    }
  }

  static BufferedImage image(Path pdf, int dpi) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFRenderer(document).renderImageWithDPI(0, dpi, ImageType.GRAY);
    }
  }
}
