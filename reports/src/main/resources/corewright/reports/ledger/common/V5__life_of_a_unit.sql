-- Computed from the events like every view: where each unit stands, what was fitted, sealed,
-- shipped, claimed; what lies in store; who owes what.
CREATE TABLE life (
  tag      ${text} PRIMARY KEY REFERENCES unit (tag),
  visit    BIGINT  NOT NULL,
  stage    ${text} NOT NULL,
  before   ${text} NOT NULL, -- empty: no step back is left
  safe     BIGINT  NOT NULL,
  since    ${text} NOT NULL,
  grade    ${text} NOT NULL,
  question ${text} NOT NULL, -- of a unit on hold; empty otherwise, like owner and due
  owner    ${text} NOT NULL,
  due      ${text} NOT NULL
);
CREATE INDEX life_of_stage ON life (stage, since);

CREATE TABLE seal (
  number ${text} PRIMARY KEY, -- a number is used once, whatever became of it
  tag    ${text} NOT NULL REFERENCES unit (tag),
  visit  BIGINT  NOT NULL,
  at     ${text} NOT NULL,
  who    ${text} NOT NULL,
  voided ${text}              -- null while it holds
);
CREATE INDEX seal_of_tag ON seal (tag);

CREATE TABLE lot (
  lot       ${text} PRIMARY KEY,
  part      ${text} NOT NULL,
  quantity  BIGINT  NOT NULL,
  remaining BIGINT  NOT NULL,
  supplier  ${text} NOT NULL,
  date_code ${text} NOT NULL,
  received  ${text} NOT NULL
);

CREATE TABLE fitted (
  tag      ${text} NOT NULL REFERENCES unit (tag),
  visit    BIGINT  NOT NULL,
  ordinal  BIGINT  NOT NULL,
  place    ${text} NOT NULL,
  part     ${text} NOT NULL,
  lot      ${text} NOT NULL,
  removed  ${text} NOT NULL, -- what the removed part measured
  who      ${text} NOT NULL,
  at       ${text} NOT NULL,
  PRIMARY KEY (tag, visit, ordinal)
);
CREATE INDEX fitted_of_lot ON fitted (lot);
CREATE INDEX fitted_by ON fitted (who, at);

CREATE TABLE shipment (
  tag            ${text} NOT NULL REFERENCES unit (tag),
  visit          BIGINT  NOT NULL,
  at             ${text} NOT NULL,
  who            ${text} NOT NULL,
  carrier        ${text} NOT NULL,
  tracking       ${text} NOT NULL,
  warranty_from  ${text} NOT NULL, -- empty where the unit left without a warranty
  warranty_until ${text} NOT NULL,
  PRIMARY KEY (tag, visit)
);
CREATE INDEX shipment_at ON shipment (at);

CREATE TABLE claim (
  tag      ${text} NOT NULL REFERENCES unit (tag),
  shipped  BIGINT  NOT NULL, -- the visit that it left from
  ordinal  BIGINT  NOT NULL,
  opened   ${text} NOT NULL,
  symptom  ${text} NOT NULL,
  class    ${text} NOT NULL, -- empty while it is open
  outcome  ${text} NOT NULL,
  closed   ${text} NOT NULL,
  PRIMARY KEY (tag, ordinal)
);

CREATE TABLE attached (
  tag    ${text} NOT NULL REFERENCES unit (tag),
  visit  BIGINT  NOT NULL,
  sha256 ${text} NOT NULL,
  name   ${text} NOT NULL,
  kind   ${text} NOT NULL,
  note   ${text} NOT NULL,
  who    ${text} NOT NULL,
  at     ${text} NOT NULL
);
CREATE INDEX attached_of_tag ON attached (tag, visit);

-- Which version of the program filled the views; an older one's are made anew from the events.
INSERT INTO counter (name, value) VALUES ('views', 0);
