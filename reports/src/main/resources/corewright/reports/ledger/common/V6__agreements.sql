-- What was offered and agreed before a unit comes, and the deposits that stand against cores.
CREATE TABLE agreement (
  number    ${text} PRIMARY KEY,
  customer  ${text} NOT NULL,
  mode      ${text} NOT NULL,
  family    ${text} NOT NULL,
  price     BIGINT  NOT NULL, -- hundredths of the currency, like every amount
  fee       BIGINT  NOT NULL,
  currency  ${text} NOT NULL,
  until     ${text} NOT NULL,
  state     ${text} NOT NULL, -- quoted, approved, declined
  answered  ${text} NOT NULL, -- by whom and how; empty while it is open
  tag       ${text} NOT NULL  -- the unit that came under it; empty before
);
CREATE INDEX agreement_of_tag ON agreement (tag);

CREATE TABLE deposit (
  number   ${text} PRIMARY KEY,
  customer ${text} NOT NULL,
  amount   BIGINT  NOT NULL,
  currency ${text} NOT NULL,
  taken    ${text} NOT NULL,
  due      ${text} NOT NULL,
  about    ${text} NOT NULL,
  outcome  ${text} NOT NULL, -- empty: a liability still
  credit   BIGINT  NOT NULL,
  settled  ${text} NOT NULL,
  tag      ${text} NOT NULL
);
CREATE INDEX deposit_open ON deposit (outcome, due);

INSERT INTO counter (name, value) VALUES ('agreement', 0);
INSERT INTO counter (name, value) VALUES ('deposit', 0);
