-- The log: what is written here stays. `body` is canonical JSON, `hash` its leaf hash (RFC 9162) in the Merkle tree over
-- all entries; the other columns repeat parts of `body` for look-up and can never differ from it.
PRAGMA application_id = 0x504C4D4B;

CREATE TABLE entries (
  seq    INTEGER PRIMARY KEY,
  stream TEXT    NOT NULL CHECK (stream = json_extract(body, '$.stream')),
  n      INTEGER NOT NULL CHECK (n = json_extract(body, '$.n')),
  hash   BLOB    NOT NULL CHECK (length(hash) = 32),
  body   TEXT    NOT NULL CHECK (seq = json_extract(body, '$.seq')),
  UNIQUE (stream, n)
) STRICT;

-- The roots of all whole subtrees above the leaves, on average one an entry. Subtree `index` of `level` (2^level leaves)
-- lies at index * 2^(level + 1) + 2^level - 1: numbered from left to right, so that appending goes on at the end.
CREATE TABLE subtrees (
  place INTEGER PRIMARY KEY,
  hash  BLOB NOT NULL CHECK (length(hash) = 32)
) STRICT;

-- Every checkpoint that was ever signed.
CREATE TABLE checkpoints (
  place INTEGER PRIMARY KEY,
  size  INTEGER NOT NULL,
  note  TEXT    NOT NULL
) STRICT;

CREATE TRIGGER entries_stay BEFORE DELETE ON entries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry cannot be deleted');
END;

CREATE TRIGGER entries_do_not_change BEFORE UPDATE ON entries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry cannot be changed');
END;

-- INSERT OR REPLACE deletes without firing the trigger above unless recursive_triggers is on, so that these two also
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

CREATE TRIGGER subtrees_stay BEFORE DELETE ON subtrees
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a subtree cannot be deleted');
END;

CREATE TRIGGER subtrees_do_not_change BEFORE UPDATE ON subtrees
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a subtree cannot be changed');
END;

CREATE TRIGGER subtrees_are_new BEFORE INSERT ON subtrees
WHEN EXISTS (SELECT 1 FROM subtrees WHERE place = NEW.place)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a subtree is there already');
END;

CREATE TRIGGER checkpoints_stay BEFORE DELETE ON checkpoints
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a checkpoint cannot be deleted');
END;

CREATE TRIGGER checkpoints_do_not_change BEFORE UPDATE ON checkpoints
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a checkpoint cannot be changed');
END;

CREATE TRIGGER checkpoints_follow BEFORE INSERT ON checkpoints
WHEN NEW.place IS NOT (SELECT coalesce(max(place), 0) + 1 FROM checkpoints)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a checkpoint must follow the last one');
END;
