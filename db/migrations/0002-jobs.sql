-- A projection of the log for look-up. It may be dropped at any time and is rebuilt from the entries.
CREATE TABLE jobs (
  stream   TEXT    PRIMARY KEY,
  job      TEXT    NOT NULL,
  vin      TEXT,
  plate    TEXT,
  openedAt TEXT    NOT NULL,
  lastAt   TEXT    NOT NULL,
  lastSeq  INTEGER NOT NULL,
  state    TEXT    NOT NULL CHECK (state IN ('open', 'complete', 'incomplete', 'void'))
) STRICT;

CREATE INDEX jobs_by_last_entry ON jobs (lastSeq DESC);
