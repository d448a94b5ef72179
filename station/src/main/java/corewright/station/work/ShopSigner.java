package corewright.station.work;

import corewright.reports.document.genuine.Signer;
import corewright.reports.ledger.SigningKey;
import java.security.PublicKey;

/** Signs documents with the key that signs the ledger. */
record ShopSigner(SigningKey key) implements Signer {

  @Override
  public byte[] sign(byte[] message) {
    return key.signDocument(message);
  }

  @Override
  public PublicKey publicKey() {
    return key.publicKey();
  }
}
