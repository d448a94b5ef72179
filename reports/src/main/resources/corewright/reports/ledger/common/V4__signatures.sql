-- Who wrote an event, proven by a key that is not in this database. Empty: written before the shop
-- had a key. The signature is over the event's hash, and so over everything that the hash is over.
ALTER TABLE event ADD COLUMN key_id    ${text} NOT NULL DEFAULT '';
ALTER TABLE event ADD COLUMN signature ${text} NOT NULL DEFAULT '';

-- Public keys by id, so that a copy of the ledger can be read anywhere. Whoever must be sure takes
-- the key from elsewhere: who could change this table could have signed with a key of his own.
CREATE TABLE signer (
  key_id     ${text} PRIMARY KEY,
  public_key ${text} NOT NULL, -- X.509 SubjectPublicKeyInfo in base64
  since      ${text} NOT NULL
);
