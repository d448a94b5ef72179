package corewright.reports.document;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** What somebody gets who copies the text out of a document. */
final class PdfText {
  private PdfText() {}

  /** All text on one line with single plain spaces. */
  static String of(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("[\\s\u00A0]+", " ").strip();
    }
  }

  /** That of the last page alone. */
  static String last(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(document.getNumberOfPages());
      return stripper.getText(document).replaceAll("[\\s\u00A0]+", " ").strip();
    }
  }

  static int pages(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return document.getNumberOfPages();
    }
  }
}
