-- Computed from the events, and made anew from them whenever that is asked for.
CREATE TABLE unit (
  tag        ${text} PRIMARY KEY,
  serial     ${text} NOT NULL,
  serial_key ${text} NOT NULL, -- capitals and digits only
  family     ${text} NOT NULL,
  label      ${text} NOT NULL,
  variant    ${text} NOT NULL,
  visits     BIGINT  NOT NULL
);
CREATE INDEX unit_serial ON unit (serial_key);

-- Every ending of every serial: a part of a serial is the beginning of one of its endings.
CREATE TABLE serial_tail (
  tail ${text} NOT NULL,
  tag  ${text} NOT NULL REFERENCES unit (tag),
  PRIMARY KEY (tail, tag)
);
CREATE INDEX serial_tail_of_tag ON serial_tail (tag);

CREATE TABLE visit (
  tag         ${text} NOT NULL REFERENCES unit (tag),
  number      BIGINT  NOT NULL,
  mode        ${text} NOT NULL,
  customer    ${text} NOT NULL,
  received    ${text} NOT NULL,
  received_by ${text} NOT NULL,
  PRIMARY KEY (tag, number)
);

CREATE TABLE run (
  id        ${text} PRIMARY KEY,
  tag       ${text} NOT NULL REFERENCES unit (tag),
  visit     BIGINT  NOT NULL,
  purpose   ${text} NOT NULL,
  number    BIGINT  NOT NULL,
  source    ${text} NOT NULL,
  started   ${text} NOT NULL,
  operator  ${text} NOT NULL,
  bench     ${text} NOT NULL,
  fixture   ${text} NOT NULL,
  profile   ${text} NOT NULL,
  capture   ${text} NOT NULL,
  ended     ${text}, -- the columns from here on are null until the run has ended
  end_kind  ${text},
  verdict   ${text},
  qualifier ${text}
);
CREATE INDEX run_of_tag ON run (tag, purpose);
CREATE INDEX run_open ON run (ended);

CREATE TABLE finding (
  run        ${text} NOT NULL REFERENCES run (id),
  ordinal    BIGINT  NOT NULL,
  limit_id   ${text} NOT NULL,
  quantity   ${text} NOT NULL,
  hold       BIGINT  NOT NULL,
  value      DOUBLE PRECISION,
  u          DOUBLE PRECISION,
  unit       ${text} NOT NULL,
  pass       DOUBLE PRECISION NOT NULL,
  fail       DOUBLE PRECISION NOT NULL,
  outcome    ${text} NOT NULL,
  margin     DOUBLE PRECISION,
  conformity DOUBLE PRECISION,
  PRIMARY KEY (run, ordinal)
);

CREATE TABLE decision (
  tag         ${text} NOT NULL REFERENCES unit (tag),
  visit       BIGINT  NOT NULL,
  ordinal     BIGINT  NOT NULL,
  at          ${text} NOT NULL,
  row_id      ${text} NOT NULL,
  disposition ${text} NOT NULL,
  destination ${text} NOT NULL,
  question    ${text} NOT NULL,
  owner       ${text} NOT NULL,
  due         ${text}, -- null unless PENDING
  PRIMARY KEY (tag, visit, ordinal)
);

CREATE TABLE document (
  tag    ${text} NOT NULL REFERENCES unit (tag),
  visit  BIGINT  NOT NULL,
  kind   ${text} NOT NULL,
  path   ${text} NOT NULL,
  sha256 ${text} NOT NULL,
  at     ${text} NOT NULL
);
CREATE INDEX document_of_tag ON document (tag, visit);
