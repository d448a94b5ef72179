package corewright.reports.document.genuine;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Makes a document one that can be checked: its record inside, a signature over everything. */
public final class SignedPdf {
  private final Signer signer;
  private final String holder;

  /**
   * @param holder whose key it is, as the signature names it
   */
  public SignedPdf(Signer signer, String holder) {
    this.signer = signer;
    this.holder = holder;
  }

  /**
   * The finished file.
   *
   * @param pdf the pages
   * @param files what they are made from
   * @param reason what the shop signs, one clause
   * @param when the moment of signing
   */
  public byte[] of(byte[] pdf, List<Attachment> files, String reason, Instant when) {
    try {
      List<Attachment> all = new ArrayList<>(files);
      try (PDDocument document = Loader.loadPDF(pdf)) {
        byte[] words = PageWords.of(document).getBytes(UTF_8);
        all.add(new Attachment(Attachment.WORDS, "text/plain", "the words of the pages", words));
      }
      all.add(Seal.over(all, signer));
      return new PdfSignature(signer, holder).sign(Attachments.put(pdf, all, when), reason, when);
    } catch (IOException e) {
      throw new UncheckedIOException("the document cannot be signed", e);
    }
  }
}
