-- The system of record. Rows are added and never changed; sqlite/ and postgresql/ hold the triggers
-- that refuse anything else.
CREATE TABLE event (
  position ${identity},
  chain    ${text} NOT NULL,
  sequence BIGINT  NOT NULL,
  at       ${text} NOT NULL, -- UTC, always with six decimals, so that text sorts as time does
  who      ${text} NOT NULL,
  kind     ${text} NOT NULL,
  tag      ${text} NOT NULL,
  body     ${text} NOT NULL, -- canonical JSON: keys sorted, no blanks
  previous ${text} NOT NULL,
  hash     ${text} NOT NULL,
  UNIQUE (chain, sequence)
);
CREATE INDEX event_of_tag ON event (tag, position);

-- Whole texts that runs were held against, stored once for all runs; keyed by what they hash to.
CREATE TABLE content (
  sha256 ${text} PRIMARY KEY,
  body   ${text} NOT NULL
);

-- Where each chain ends. Locked first by whoever appends, so that two writers never fork a chain.
CREATE TABLE chain (
  name     ${text} PRIMARY KEY,
  sequence BIGINT  NOT NULL,
  hash     ${text} NOT NULL
);

CREATE TABLE counter (
  name  ${text} PRIMARY KEY,
  value BIGINT  NOT NULL
);
INSERT INTO counter (name, value) VALUES ('unit', 0);
INSERT INTO counter (name, value) VALUES ('customer', 0);

-- Persons live outside the events, which name them by code: their data can be removed and the
-- technical history stays whole.
CREATE TABLE customer (
  code ${text} PRIMARY KEY,
  name ${text} NOT NULL
);
CREATE UNIQUE INDEX customer_name ON customer (name);
