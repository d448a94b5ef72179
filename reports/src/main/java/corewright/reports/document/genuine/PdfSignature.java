package corewright.reports.document.genuine;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigInteger;
import java.security.PublicKey;
import java.time.Instant;
import java.util.Calendar;
import java.util.Date;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;
import org.bouncycastle.asn1.edec.EdECObjectIdentifiers;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.AlgorithmIdentifier;
import org.bouncycastle.asn1.x509.SubjectPublicKeyInfo;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.SignerInfoGeneratorBuilder;
import org.bouncycastle.operator.ContentSigner;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.bc.BcDigestCalculatorProvider;

/**
 * Signs a document over all of its bytes, in the way that the format has for it: a CMS signature in
 * a gap of the file, which the signed range leaves out.
 *
 * @see "ISO 32000-1, 12.8; RFC 8419, EdDSA in CMS; ISO/TS 32002, EdDSA in PDF (from memory)"
 */
final class PdfSignature {
  /** The same day for every document: the certificate only carries the key. */
  private static final Instant FROM = Instant.parse("2020-01-01T00:00:00Z");

  private static final Instant UNTIL = Instant.parse("2120-01-01T00:00:00Z");

  private final Signer signer;
  private final String holder;

  /**
   * @param holder whose key it is, as the signature names it
   */
  PdfSignature(Signer signer, String holder) {
    this.signer = signer;
    this.holder = holder;
  }

  byte[] sign(byte[] pdf, String reason, Instant when) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDSignature signature = new PDSignature();
      signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
      signature.setSubFilter(PDSignature.SUBFILTER_ADBE_PKCS7_DETACHED);
      signature.setName(holder);
      signature.setReason(reason);
      Calendar moment = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
      moment.setTimeInMillis(when.toEpochMilli());
      signature.setSignDate(moment);
      document.addSignature(signature, content -> cms(content.readAllBytes()));
      outOfSight(document);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.saveIncremental(out);
      return out.toByteArray();
    }
  }

  /** The field that holds the signature shows nothing: it lies outside the page, and has a name. */
  private static void outOfSight(PDDocument document) throws IOException {
    PDSignatureField field = document.getSignatureFields().get(0);
    field.setAlternateFieldName("Signature of the shop over this whole file");
    var widget = field.getWidgets().get(0);
    widget.setRectangle(new PDRectangle(-20, -20, 0, 0));
    widget.setPrinted(true);
    document.getPage(0).getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
  }

  private byte[] cms(byte[] content) throws IOException {
    try {
      X509CertificateHolder certificate = certificate();
      CMSSignedDataGenerator generator = new CMSSignedDataGenerator();
      generator.addSignerInfoGenerator(
          new SignerInfoGeneratorBuilder(new BcDigestCalculatorProvider())
              .build(new KeyOfTheShop(signer), certificate));
      generator.addCertificate(certificate);
      return generator.generate(new CMSProcessableByteArray(content), false).getEncoded("DER");
    } catch (CMSException | OperatorCreationException e) {
      throw new IOException("the document cannot be signed: " + e.getMessage(), e);
    }
  }

  /** A wrapping that carries the public key; nobody but the shop vouches for it. */
  private X509CertificateHolder certificate() {
    PublicKey key = signer.publicKey();
    X500Name name = new X500NameBuilder().addRDN(BCStyle.CN, holder).build();
    return new X509v3CertificateBuilder(
            name,
            new BigInteger(1, ShortCode.sha256(key.getEncoded())).shiftRight(97),
            Date.from(FROM),
            Date.from(UNTIL),
            name,
            SubjectPublicKeyInfo.getInstance(key.getEncoded()))
        .build(new KeyOfTheShop(signer));
  }

  /** Lets the library sign with a key that it never sees. */
  private static final class KeyOfTheShop implements ContentSigner {
    private final ByteArrayOutputStream message = new ByteArrayOutputStream();
    private final Signer signer;

    KeyOfTheShop(Signer signer) {
      this.signer = signer;
    }

    @Override
    public AlgorithmIdentifier getAlgorithmIdentifier() {
      return new AlgorithmIdentifier(EdECObjectIdentifiers.id_Ed25519);
    }

    @Override
    public OutputStream getOutputStream() {
      message.reset();
      return message;
    }

    @Override
    public byte[] getSignature() {
      return signer.sign(message.toByteArray());
    }
  }
}
