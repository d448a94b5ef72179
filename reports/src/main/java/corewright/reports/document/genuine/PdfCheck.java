package corewright.reports.document.genuine;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.spec.X509EncodedKeySpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.cert.CertException;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentVerifierProviderBuilder;

/** Checks a document without network and without the shop's record. */
public final class PdfCheck {
  /** What is broken in a forged page is told once, by this class; held, or its level is lost. */
  private static final Logger PAGES = Logger.getLogger("org.apache.pdfbox");

  static {
    PAGES.setLevel(Level.OFF);
  }

  private PdfCheck() {}

  /**
   * Checks a document.
   *
   * @param pdf the whole file
   * @param trusted the shop's public key, from elsewhere; without it the document's own is taken,
   *     which proves only that nobody changed it since whoever had that key signed it
   */
  public static Genuine check(byte[] pdf, Optional<PublicKey> trusted) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return check(document, pdf, trusted);
    } catch (IOException | RuntimeException e) {
      return unreadable("It cannot be read as a PDF: " + e.getMessage() + ".");
    }
  }

  private static Genuine check(PDDocument document, byte[] pdf, Optional<PublicKey> trusted)
      throws IOException {
    List<Attachment> files = Attachments.of(document);
    Optional<byte[]> record = bytes(files, Attachment.RECORD);
    List<String> faults = new ArrayList<>();
    Optional<Signed> signed = signature(document, pdf, faults);
    Optional<PublicKey> own = signed.flatMap(Signed::key);
    Optional<PublicKey> key = trusted.or(() -> own);
    if (trusted.isPresent() && !trusted.equals(own)) {
      faults.add("It is not signed with the key that was given.");
    }
    if (!faults.isEmpty() && key.isPresent()) {
      faults.addAll(Seal.faults(files, key.get()));
      bytes(files, Attachment.WORDS)
          .map(words -> new String(words, UTF_8))
          .ifPresent(words -> faults.addAll(differences(words, document)));
    }
    return new Genuine(
        faults.isEmpty(),
        own,
        signed.map(Signed::holder).orElse(""),
        record.map(r -> new String(r, UTF_8)),
        record.map(ShortCode::of).orElse(""),
        faults);
  }

  private record Signed(Optional<PublicKey> key, String holder) {}

  private static Optional<Signed> signature(PDDocument document, byte[] pdf, List<String> faults)
      throws IOException {
    List<PDSignature> signatures = document.getSignatureDictionaries();
    if (signatures.size() != 1) {
      faults.add(
          signatures.isEmpty()
              ? "It carries no signature."
              : "It carries more than one signature.");
      return Optional.empty();
    }
    PDSignature signature = signatures.get(0);
    int[] range = signature.getByteRange();
    if (range == null || !coversAll(range, pdf, signature)) {
      faults.add("Its signature does not cover the whole file: something was added to it.");
    }
    try {
      CMSSignedData cms =
          new CMSSignedData(
              new CMSProcessableByteArray(signature.getSignedContent(pdf)),
              signature.getContents(pdf));
      SignerInformation signer = cms.getSignerInfos().getSigners().iterator().next();
      X509CertificateHolder certificate = cms.getCertificates().getMatches(null).iterator().next();
      PublicKey key =
          KeyFactory.getInstance("Ed25519")
              .generatePublic(
                  new X509EncodedKeySpec(certificate.getSubjectPublicKeyInfo().getEncoded()));
      boolean own =
          certificate.isSignatureValid(new JcaContentVerifierProviderBuilder().build(key))
              && signer.getSID().match(certificate);
      if (!own || !signer.verify(new JcaSimpleSignerInfoVerifierBuilder().build(key))) {
        faults.add("Its bytes are not those that were signed.");
      }
      String holder = certificate.getSubject().toString().replaceFirst("^CN=", "");
      return Optional.of(new Signed(Optional.of(key), holder));
    } catch (CMSException | CertException | IOException e) {
      faults.add("Its bytes are not those that were signed (" + e.getMessage() + ").");
    } catch (GeneralSecurityException | OperatorCreationException | RuntimeException e) {
      faults.add("Its signature cannot be read (" + e.getMessage() + ").");
    }
    return Optional.empty();
  }

  /** Everything but the signature's own hexadecimal digits between its brackets. */
  private static boolean coversAll(int[] range, byte[] pdf, PDSignature signature)
      throws IOException {
    if (range.length != 4 || range[0] != 0 || range[2] + range[3] != pdf.length) {
      return false;
    }
    int from = range[1];
    int to = range[2];
    if (from < 0 || to > pdf.length || to - from < 2 || pdf[from] != '<' || pdf[to - 1] != '>') {
      return false;
    }
    for (int i = from + 1; i < to - 1; i++) {
      if (pdf[i] >= 'a' || Character.digit(pdf[i], 16) < 0) { // we write capitals
        return false;
      }
    }
    return padded(pdf, from + 1, to - 1, signature.getContents(pdf));
  }

  /** Behind the signature the gap holds zeros and nothing else. */
  private static boolean padded(byte[] pdf, int from, int to, byte[] contents) {
    int length = derLength(contents);
    for (int i = from + 2 * length; i < to; i++) {
      if (pdf[i] != '0') {
        return false;
      }
    }
    return length > 0 && from + 2 * length <= to;
  }

  /** Length of the outermost DER element with its header; 0 if it has none. */
  private static int derLength(byte[] der) {
    if (der.length < 4 || der[0] != 0x30) {
      return 0;
    }
    int first = der[1] & 0xFF;
    if (first < 0x80) {
      return first + 2;
    }
    int count = first & 0x7F;
    int length = 0;
    for (int i = 0; i < count && i < 3; i++) {
      length = length << 8 | (der[2 + i] & 0xFF);
    }
    return length + 2 + count;
  }

  private static List<String> differences(String signed, PDDocument document) {
    try {
      return PageWords.differences(signed, PageWords.of(document));
    } catch (IOException e) {
      return List.of("Its pages cannot be read: " + e.getMessage() + ".");
    }
  }

  private static Optional<byte[]> bytes(List<Attachment> files, String name) {
    return files.stream().filter(f -> f.name().equals(name)).map(Attachment::bytes).findFirst();
  }

  private static Genuine unreadable(String why) {
    return new Genuine(false, Optional.empty(), "", Optional.empty(), "", List.of(why));
  }
}
