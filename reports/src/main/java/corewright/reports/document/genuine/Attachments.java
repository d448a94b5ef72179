package corewright.reports.document.genuine;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * Puts files into a document and takes them out again.
 *
 * @see "ISO 19005-3, 6.8: embedded files of a PDF/A-3"
 */
final class Attachments {
  private Attachments() {}

  /** The document with the files in it, each associated with the whole document. */
  static byte[] put(byte[] pdf, List<Attachment> files, Instant made) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Map<String, PDComplexFileSpecification> named = new LinkedHashMap<>();
      COSArray associated = new COSArray();
      for (Attachment file : files) {
        PDComplexFileSpecification specification = specification(document, file, made);
        named.put(file.name(), specification);
        associated.add(specification.getCOSObject());
      }
      PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
      tree.setNames(named);
      PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
      names.setEmbeddedFiles(tree);
      document.getDocumentCatalog().setNames(names);
      document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("AF"), associated);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    }
  }

  private static PDComplexFileSpecification specification(
      PDDocument document, Attachment file, Instant made) throws IOException {
    PDEmbeddedFile embedded =
        new PDEmbeddedFile(document, new ByteArrayInputStream(file.bytes()), COSName.FLATE_DECODE);
    Calendar moment = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
    moment.setTimeInMillis(made.toEpochMilli());
    embedded.setSubtype(file.type());
    embedded.setSize(file.bytes().length);
    embedded.setCreationDate(moment);
    embedded.setModDate(moment);
    PDComplexFileSpecification specification = new PDComplexFileSpecification();
    specification.setFile(file.name());
    specification.setFileUnicode(file.name());
    specification.setFileDescription(file.describes());
    specification.setEmbeddedFile(embedded);
    specification.setEmbeddedFileUnicode(embedded);
    specification
        .getCOSObject()
        .setName("AFRelationship", file.name().equals(Attachment.RECORD) ? "Source" : "Supplement");
    return specification;
  }

  /** The files in a document, by name; empty where there are none. */
  static List<Attachment> of(PDDocument document) throws IOException {
    List<Attachment> files = new ArrayList<>();
    PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
    if (names == null || names.getEmbeddedFiles() == null) {
      return files;
    }
    Map<String, PDComplexFileSpecification> named = names.getEmbeddedFiles().getNames();
    if (named == null) {
      return files;
    }
    for (var entry : named.entrySet()) {
      PDEmbeddedFile embedded = entry.getValue().getEmbeddedFileUnicode();
      if (embedded != null) {
        String type = embedded.getSubtype() == null ? "" : embedded.getSubtype();
        files.add(new Attachment(entry.getKey(), type, "", embedded.toByteArray()));
      }
    }
    return files;
  }
}
