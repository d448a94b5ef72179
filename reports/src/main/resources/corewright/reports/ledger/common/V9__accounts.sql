-- Who may do what. Not told in the events, because a password's hash is nobody's business; that an
-- account was made, by whom and with which role, is an event.
CREATE TABLE account (
  name       ${text} PRIMARY KEY,
  role       ${text} NOT NULL,
  salt       ${text} NOT NULL, -- hex, like the hash
  hash       ${text} NOT NULL,
  iterations BIGINT  NOT NULL,
  since      ${text} NOT NULL
);
