-- What a teardown showed, beside what was expected from outside.
CREATE TABLE confirmed (
  tag       ${text} NOT NULL REFERENCES unit (tag),
  visit     BIGINT  NOT NULL,
  fault     ${text} NOT NULL,
  predicted ${text} NOT NULL,
  who       ${text} NOT NULL,
  at        ${text} NOT NULL
);
CREATE INDEX confirmed_of_tag ON confirmed (tag, visit);
