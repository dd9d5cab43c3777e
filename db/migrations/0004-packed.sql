-- The log in less room: names of streams once, bodies deflated, and only the larger subtrees.

-- Entries are much alike: text that they are deflated with the help of, so that any program that knows RFC 1951 can read
-- them with nothing but this file.
CREATE TABLE dictionaries (
  id   INTEGER PRIMARY KEY CHECK (id BETWEEN 1 AND 255),
  text TEXT    NOT NULL
) STRICT;

CREATE TABLE streams (
  id   INTEGER PRIMARY KEY,
  name TEXT    NOT NULL UNIQUE
) STRICT;

INSERT INTO streams (id, name)
SELECT row_number() OVER (ORDER BY min(seq)), stream FROM entries GROUP BY stream;

-- `body` is canonical JSON: as text, or one byte that names a dictionary and then raw deflate (RFC 1951). `hash` is its leaf
-- hash (RFC 9162) in the Merkle tree over all entries. `kind` is 0 for samples, 2 for what opens, closes or voids a job,
-- 1 for all else; it repeats a part of `body` for look-up, as `seq`, `stream` and `n` do.
CREATE TABLE packed (
  seq    INTEGER PRIMARY KEY,
  stream INTEGER NOT NULL REFERENCES streams (id),
  n      INTEGER NOT NULL,
  kind   INTEGER NOT NULL CHECK (kind IN (0, 1, 2)),
  hash   BLOB    NOT NULL CHECK (length(hash) = 32),
  body   ANY     NOT NULL CHECK (typeof(body) IN ('text', 'blob')),
  UNIQUE (stream, n)
) STRICT;

INSERT INTO packed (seq, stream, n, kind, hash, body)
SELECT e.seq, s.id, e.n,
  CASE json_extract(e.body, '$.event.type')
    WHEN 'readings' THEN 0
    WHEN 'job-opened' THEN 2
    WHEN 'job-closed' THEN 2
    WHEN 'job-voided' THEN 2
    ELSE 1
  END,
  e.hash, e.body
FROM entries e JOIN streams s ON s.name = e.stream ORDER BY e.seq;

DROP TABLE entries;
ALTER TABLE packed RENAME TO entries;

CREATE TRIGGER entries_stay BEFORE DELETE ON entries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry cannot be deleted');
END;

CREATE TRIGGER entries_do_not_change BEFORE UPDATE ON entries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry cannot be changed');
END;

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

-- Foreign keys bind only connections that ask for it.
CREATE TRIGGER entries_have_a_stream BEFORE INSERT ON entries
WHEN NOT EXISTS (SELECT 1 FROM streams WHERE id = NEW.stream)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry belongs to a stream that is there');
END;

CREATE TRIGGER streams_stay BEFORE DELETE ON streams
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a stream cannot be deleted');
END;

CREATE TRIGGER streams_do_not_change BEFORE UPDATE ON streams
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a stream cannot be changed');
END;

CREATE TRIGGER streams_follow BEFORE INSERT ON streams
WHEN NEW.id IS NOT (SELECT coalesce(max(id), 0) + 1 FROM streams)
  OR EXISTS (SELECT 1 FROM streams WHERE name = NEW.name)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a stream must follow the last one');
END;

CREATE TRIGGER dictionaries_stay BEFORE DELETE ON dictionaries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a dictionary cannot be deleted');
END;

CREATE TRIGGER dictionaries_do_not_change BEFORE UPDATE ON dictionaries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a dictionary cannot be changed');
END;

CREATE TRIGGER dictionaries_are_new BEFORE INSERT ON dictionaries
WHEN EXISTS (SELECT 1 FROM dictionaries WHERE id = NEW.id)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a dictionary is there already');
END;

-- A subtree of level 1 or 2 is made again from four leaves at most: its level is the number of zeros behind the last one of
-- `place` + 1 in binary.
DROP TRIGGER IF EXISTS subtrees_stay;
DELETE FROM subtrees WHERE (place + 1) % 8 <> 0;
CREATE TRIGGER subtrees_stay BEFORE DELETE ON subtrees
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a subtree cannot be deleted');
END;
