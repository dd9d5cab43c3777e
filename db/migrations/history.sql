-- The history: projections of the log that questions are asked of. They hold nothing that the entries do not say, may be
-- dropped at any time and are made again from them; `projection` tells which program made them.
DROP TABLE IF EXISTS attempts;
DROP TABLE IF EXISTS setups;
DROP TABLE IF EXISTS tools;
DROP TABLE IF EXISTS people;
DROP TABLE IF EXISTS parts;
DROP TABLE IF EXISTS jobs;
DROP TABLE IF EXISTS projection;

CREATE TABLE projection (
  version INTEGER NOT NULL
) STRICT;

-- `vinKey` and so on are what is looked up: capitals, without spaces and hyphens. Columns from `foldedSeq` on come from
-- folding the job's entries up to that one; a job that went on since is folded again before it is asked about.
CREATE TABLE jobs (
  id        INTEGER PRIMARY KEY,
  stream    TEXT    NOT NULL UNIQUE,
  job       TEXT    NOT NULL,
  vin       TEXT,
  plate     TEXT,
  fleet     TEXT,
  vinKey    TEXT,
  plateKey  TEXT,
  fleetKey  TEXT,
  openedAt  TEXT    NOT NULL,
  lastAt    TEXT    NOT NULL,
  lastSeq   INTEGER NOT NULL,
  state     TEXT    NOT NULL CHECK (state IN ('open', 'complete', 'incomplete', 'void')),
  foldedSeq INTEGER NOT NULL DEFAULT 0,
  day       TEXT,
  setup     INTEGER,
  sources   INTEGER,
  outOfOrder TEXT
) STRICT;

CREATE INDEX jobs_by_last_entry ON jobs (lastSeq DESC);
CREATE INDEX jobs_by_opening ON jobs (openedAt);
CREATE INDEX jobs_by_vin ON jobs (vinKey);
CREATE INDEX jobs_by_plate ON jobs (plateKey);
CREATE INDEX jobs_by_fleet ON jobs (fleetKey) WHERE fleetKey IS NOT NULL;
CREATE INDEX jobs_by_setup ON jobs (setup, openedAt);
CREATE INDEX jobs_open ON jobs (lastSeq DESC) WHERE state = 'open';
CREATE INDEX jobs_to_fold ON jobs (id) WHERE foldedSeq < lastSeq;

-- What jobs share, once each.
CREATE TABLE setups (
  id            INTEGER PRIMARY KEY,
  key           TEXT NOT NULL UNIQUE,
  specification TEXT NOT NULL,
  engine        TEXT,
  lower         REAL NOT NULL,
  upper         REAL NOT NULL,
  firstLower    REAL,
  firstUpper    REAL,
  gapLower      REAL,
  gapUpper      REAL,
  body          TEXT NOT NULL
) STRICT;
CREATE INDEX setups_by_specification ON setups (specification);

CREATE TABLE tools (
  id     INTEGER PRIMARY KEY,
  tool   TEXT NOT NULL,
  serial TEXT,
  certificate TEXT
) STRICT;
CREATE UNIQUE INDEX tools_once ON tools (tool, ifnull(serial, ''), ifnull(certificate, ''));

CREATE TABLE people (
  id   INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE
) STRICT;

CREATE TABLE parts (
  id   INTEGER PRIMARY KEY,
  part TEXT NOT NULL,
  lot  TEXT
) STRICT;
CREATE UNIQUE INDEX parts_once ON parts (part, ifnull(lot, ''));

-- One row an attempt; db/attempts.ts says what the numbers in `kind`, `source`, `result`, `side` and `flags` stand for.
CREATE TABLE attempts (
  job      INTEGER NOT NULL,
  seq      INTEGER NOT NULL,
  atMs     INTEGER NOT NULL,
  length   INTEGER NOT NULL,
  cylinder INTEGER NOT NULL,
  number   INTEGER NOT NULL,
  tool     INTEGER NOT NULL,
  person   INTEGER NOT NULL,
  part     INTEGER NOT NULL,
  kind     INTEGER NOT NULL,
  source   INTEGER NOT NULL,
  result   INTEGER,
  side     INTEGER,
  flags    INTEGER NOT NULL,
  reading  REAL,
  value    REAL,
  expanded REAL,
  peak     REAL,
  PRIMARY KEY (job, seq)
) STRICT, WITHOUT ROWID;

CREATE INDEX attempts_by_tool ON attempts (tool, atMs);
CREATE INDEX attempts_by_person ON attempts (person, atMs);
CREATE INDEX attempts_by_part ON attempts (part, atMs);
CREATE INDEX attempts_by_time ON attempts (atMs);
