/**
 * What questions are asked of in an archive: it follows from the bundles and may be made again at any time. Everything of a
 * log goes with it when the log forgets a text, so nothing here is shared by logs.
 */
export const HISTORY_TABLES = [
  // `bundles`: the numbers of those that have its entries. No state: its entries cannot be read.
  `CREATE TABLE jobs (
    log TEXT NOT NULL, opened WHOLE NOT NULL, tenant TEXT NOT NULL, stream TEXT NOT NULL, last WHOLE NOT NULL,
    bundles TEXT NOT NULL, job TEXT, state TEXT, opened_at TEXT, last_at TEXT, vin TEXT, plate TEXT, fleet TEXT,
    vin_key TEXT, plate_key TEXT, fleet_key TEXT, day TEXT, setup WHOLE, sources SMALL, out_of_order TEXT,
    PRIMARY KEY (log, opened))`,
  'CREATE INDEX jobs_by_stream ON jobs (log, stream)',
  'CREATE INDEX jobs_by_vin ON jobs (tenant, vin_key)',
  'CREATE INDEX jobs_by_plate ON jobs (tenant, plate_key)',
  'CREATE INDEX jobs_by_fleet ON jobs (tenant, fleet_key)',
  'CREATE INDEX jobs_by_opening ON jobs (tenant, opened_at)',
  'CREATE INDEX jobs_by_setup ON jobs (tenant, setup)',
  // db/attempts.ts says what the numbers in `kind`, `source`, `result`, `side` and `flags` stand for.
  `CREATE TABLE attempts (
    log TEXT NOT NULL, seq WHOLE NOT NULL, tenant TEXT NOT NULL, opened WHOLE NOT NULL, setup WHOLE NOT NULL,
    at_ms WHOLE NOT NULL, quantity SMALL NOT NULL, cylinder SMALL NOT NULL, number SMALL NOT NULL, tool WHOLE NOT NULL,
    person WHOLE NOT NULL, part WHOLE NOT NULL, kind SMALL NOT NULL, source SMALL NOT NULL, result SMALL, side SMALL,
    flags SMALL NOT NULL, exception SMALL NOT NULL, reading AMOUNT, value AMOUNT, expanded AMOUNT, peak AMOUNT,
    PRIMARY KEY (log, opened, seq))`,
  'CREATE INDEX attempts_by_tool ON attempts (tenant, tool, at_ms)',
  'CREATE INDEX attempts_by_person ON attempts (tenant, person, at_ms)',
  'CREATE INDEX attempts_by_part ON attempts (tenant, part, at_ms)',
  'CREATE INDEX attempts_by_setup ON attempts (tenant, setup, at_ms)',
  'CREATE INDEX attempts_by_time ON attempts (tenant, at_ms)',
  'CREATE INDEX attempts_exceptions ON attempts (tenant, at_ms) WHERE exception = 1',
  // What attempts share, once a log; the key is a hash of it, so that one tool has one key in all logs.
  `CREATE TABLE setups (
    log TEXT NOT NULL, setup WHOLE NOT NULL, tenant TEXT NOT NULL, name TEXT NOT NULL, specification TEXT NOT NULL,
    engine TEXT, lower AMOUNT NOT NULL, upper AMOUNT NOT NULL, first_lower AMOUNT, first_upper AMOUNT, gap_lower AMOUNT,
    gap_upper AMOUNT, body TEXT NOT NULL, PRIMARY KEY (log, setup))`,
  'CREATE INDEX setups_by_specification ON setups (tenant, specification)',
  'CREATE INDEX setups_by_key ON setups (tenant, setup)',
  'CREATE INDEX setups_by_name ON setups (tenant, name)',
  `CREATE TABLE tools (
    log TEXT NOT NULL, tool WHOLE NOT NULL, tenant TEXT NOT NULL, id TEXT NOT NULL, serial TEXT, certificate TEXT,
    id_key TEXT NOT NULL, serial_key TEXT, PRIMARY KEY (log, tool))`,
  'CREATE INDEX tools_by_key ON tools (tenant, tool)',
  'CREATE INDEX tools_by_id ON tools (tenant, id_key)',
  'CREATE INDEX tools_by_serial ON tools (tenant, serial_key)',
  'CREATE TABLE people (log TEXT NOT NULL, person WHOLE NOT NULL, tenant TEXT NOT NULL, name TEXT NOT NULL, name_key TEXT NOT NULL, PRIMARY KEY (log, person))',
  'CREATE INDEX people_by_key ON people (tenant, person)',
  'CREATE INDEX people_by_name ON people (tenant, name_key)',
  `CREATE TABLE parts (
    log TEXT NOT NULL, part WHOLE NOT NULL, tenant TEXT NOT NULL, number TEXT NOT NULL, lot TEXT, number_key TEXT NOT NULL,
    lot_key TEXT, PRIMARY KEY (log, part))`,
  'CREATE INDEX parts_by_key ON parts (tenant, part)',
  'CREATE INDEX parts_by_number ON parts (tenant, number_key)',
  'CREATE INDEX parts_by_lot ON parts (tenant, lot_key)',
  // The entries of each station's own stream.
  'CREATE TABLE station_entries (log TEXT NOT NULL, seq WHOLE NOT NULL, tenant TEXT NOT NULL, body TEXT NOT NULL, disclosures TEXT NOT NULL, PRIMARY KEY (log, seq))',
] as const;

/** What goes when a log forgets a text, and comes again without it. */
export const OF_HISTORY = [
  'attempts',
  'jobs',
  'setups',
  'tools',
  'people',
  'parts',
  'station_entries',
] as const;
