-- Which rows of a shop's old spreadsheets were brought in, so that none is brought twice. Computed from
-- the events like every view.
CREATE TABLE brought (
  row_key ${text} PRIMARY KEY, -- what names the row in the old books
  tag     ${text} NOT NULL REFERENCES unit (tag),
  content ${text} NOT NULL,    -- hash of everything in the row that was read
  file    ${text} NOT NULL,
  line    BIGINT  NOT NULL
);
CREATE INDEX brought_of_tag ON brought (tag);
