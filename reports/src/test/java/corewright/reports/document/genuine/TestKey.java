package corewright.reports.document.genuine;

import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PublicKey;
import java.security.Signature;

/** A key of its own for each test. */
public final class TestKey implements Signer {
  private final KeyPair pair;

  public TestKey() {
    try {
      pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public byte[] sign(byte[] message) {
    try {
      Signature signature = Signature.getInstance("Ed25519");
      signature.initSign(pair.getPrivate());
      signature.update(message);
      return signature.sign();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public PublicKey publicKey() {
    return pair.getPublic();
  }
}
