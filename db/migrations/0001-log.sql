-- The log: what is written here stays. `body` is the canonical JSON that `hash` is made of; the other columns repeat
-- parts of it for look-up and can never differ from it.
PRAGMA application_id = 0x504C4D4B;

CREATE TABLE entries (
  seq    INTEGER PRIMARY KEY,
  stream TEXT    NOT NULL CHECK (stream = json_extract(body, '$.stream')),
  n      INTEGER NOT NULL CHECK (n = json_extract(body, '$.n')),
  hash   TEXT    NOT NULL UNIQUE CHECK (length(hash) = 64 AND hash NOT GLOB '*[^0-9a-f]*'),
  body   TEXT    NOT NULL CHECK (seq = json_extract(body, '$.seq')),
  UNIQUE (stream, n)
) STRICT;

CREATE TRIGGER entries_stay BEFORE DELETE ON entries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry cannot be deleted');
END;

CREATE TRIGGER entries_do_not_change BEFORE UPDATE ON entries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry cannot be changed');
END;

-- INSERT OR REPLACE deletes without firing the trigger above unless recursive_triggers is on, so that these three also
-- refuse whatever could collide with an entry that is there.
CREATE TRIGGER entries_follow_in_log BEFORE INSERT ON entries
WHEN NEW.seq IS NOT (SELECT coalesce(max(seq), 0) + 1 FROM entries)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: seq must follow the last entry');
END;

CREATE TRIGGER entries_follow_in_stream BEFORE INSERT ON entries
WHEN NEW.n IS NOT (SELECT coalesce(max(n), 0) + 1 FROM entries WHERE stream = NEW.stream)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: n must follow the last entry of the stream');
END;

CREATE TRIGGER entries_are_chained BEFORE INSERT ON entries
WHEN json_extract(NEW.body, '$.prev') IS NOT coalesce(
       (SELECT hash FROM entries ORDER BY seq DESC LIMIT 1),
       '0000000000000000000000000000000000000000000000000000000000000000')
  OR EXISTS (SELECT 1 FROM entries WHERE hash = NEW.hash)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: prev must be the hash of the last entry');
END;
