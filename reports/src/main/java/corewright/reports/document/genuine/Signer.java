package corewright.reports.document.genuine;

import java.security.PublicKey;

/** Signs with a shop's key, whose private half this never shows. */
public interface Signer {

  /** The Ed25519 signature over {@code message}, 64 bytes (RFC 8032). */
  byte[] sign(byte[] message);

  PublicKey publicKey();
}
