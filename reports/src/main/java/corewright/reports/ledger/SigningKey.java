package corewright.reports.ledger;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;

/** The key with which one place signs what it writes. Its private half never leaves this class. */
public final class SigningKey {
  private final PrivateKey secret;
  private final PublicKey open;

  SigningKey(KeyPair pair) {
    this.secret = pair.getPrivate();
    this.open = pair.getPublic();
  }

  /** A new key, of this computer's secure random numbers. */
  static SigningKey make() {
    try {
      return new SigningKey(KeyPairGenerator.getInstance(PublicKeys.ALGORITHM).generateKeyPair());
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java from 15 on has Ed25519", e);
    }
  }

  /**
   * A key as {@link #text} gave it.
   *
   * @throws IllegalArgumentException if it is none, or if its halves do not belong together
   */
  static SigningKey ofText(String text) {
    List<String> halves = text.lines().toList();
    if (halves.size() != 2) {
      throw new IllegalArgumentException("two lines expected, " + halves.size() + " found");
    }
    PublicKey open = PublicKeys.ofBase64(halves.get(1));
    try {
      PrivateKey secret =
          KeyFactory.getInstance(PublicKeys.ALGORITHM)
              .generatePrivate(new PKCS8EncodedKeySpec(Base64.getDecoder().decode(halves.get(0))));
      SigningKey key = new SigningKey(new KeyPair(open, secret));
      if (!PublicKeys.signed(open, Hashes.NOTHING, key.sign(Hashes.NOTHING))) {
        throw new IllegalArgumentException("the two halves do not belong together");
      }
      return key;
    } catch (GeneralSecurityException e) {
      throw new IllegalArgumentException("not an Ed25519 private key", e);
    }
  }

  /** Both halves, PKCS #8 and X.509, a line of base64 each. */
  String text() {
    return Base64.getEncoder().encodeToString(secret.getEncoded())
        + "\n"
        + PublicKeys.base64(open)
        + "\n";
  }

  public PublicKey publicKey() {
    return open;
  }

  /** See {@link PublicKeys#id}. */
  public String id() {
    return PublicKeys.id(open);
  }

  /** The signature over an event's hash, as hex. */
  String sign(String hash) {
    return HexFormat.of().formatHex(sign(PublicKeys.signedText(hash)));
  }

  /**
   * The signature over a message, 64 bytes.
   *
   * @throws IllegalArgumentException if the message begins as what is signed for an event does: no
   *     document may pass for an event
   */
  public byte[] signDocument(byte[] message) {
    if (PublicKeys.isSignedText(message)) {
      throw new IllegalArgumentException("only the ledger signs events");
    }
    return sign(message);
  }

  private byte[] sign(byte[] message) {
    try {
      Signature signature = Signature.getInstance(PublicKeys.ALGORITHM);
      signature.initSign(secret);
      signature.update(message);
      return signature.sign();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("a key that was made here can sign", e);
    }
  }
}
