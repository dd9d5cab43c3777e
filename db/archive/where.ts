/** What a question to an archive asks for, as SQL with parameters. The tenant comes first, and nobody's filter can leave it out. */
import type { AttemptFilter, JobsFilter } from '../../src/audit/records.ts';
import { lookUpKey } from '../jobs.ts';
import type { Value } from './sql.ts';

/** Whose rows may be seen: those of a tenant, or of one log of it. */
export interface Scope {
  readonly tenant: string;
  readonly log: string | null;
}

export interface Where {
  readonly where: string;
  readonly values: readonly Value[];
}

const DAY_MS = 86_400_000;
const dayMs = (day: string) => Date.parse(`${day}T00:00:00.000Z`);

class Conditions {
  readonly #texts: string[] = [];
  readonly #values: Value[] = [];
  and(text: string, ...values: readonly Value[]): this {
    this.#texts.push(text);
    this.#values.push(...values);
    return this;
  }
  get all(): Where {
    return { where: this.#texts.join(' AND '), values: this.#values };
  }
}

const within = ({ tenant, log }: Scope, table: 'a' | 'j'): Conditions => {
  const conditions = new Conditions().and(`${table}.tenant = ?`, tenant);
  return log === null ? conditions : conditions.and(`${table}.log = ?`, log);
};

/** Conditions on `attempts a` joined with `jobs j`. */
export function whereAttempts(scope: Scope, filter: AttemptFilter, keys: Keys): Where {
  const conditions = within(scope, 'a').and('j.tenant = ?', scope.tenant);
  ofJob(conditions, filter);
  ofKeys(conditions, keys, 'a', ['setup', 'tool', 'person', 'part']);
  const { from, to, quantity, exceptionsOnly, afterSeq, log } = filter;
  if (from !== undefined) conditions.and('a.at_ms >= ?', dayMs(from));
  if (to !== undefined) conditions.and('a.at_ms < ?', dayMs(to) + DAY_MS);
  if (quantity !== undefined) conditions.and('a.quantity = ?', quantity === 'length' ? 1 : 0);
  if (exceptionsOnly === true) conditions.and('a.exception = 1');
  if (afterSeq !== undefined) conditions.and('a.seq > ?', afterSeq);
  if (log !== undefined) conditions.and('a.log = ?', log);
  return conditions.all;
}

/** Conditions on `jobs j`; those on attempts hold for a job that has one such attempt. */
export function whereJobs(scope: Scope, filter: JobsFilter, keys: Keys): Where {
  // A job without a state cannot be read.
  const conditions = within(scope, 'j').and('j.state IS NOT NULL');
  ofJob(conditions, filter);
  ofKeys(conditions, keys, 'j', ['setup']);
  const { from, to, state, exceptionsOnly, log } = filter;
  if (from !== undefined) conditions.and('j.opened_at >= ?', from);
  // Every moment of that day comes before it with a tilde behind it.
  if (to !== undefined) conditions.and('j.opened_at < ?', `${to}~`);
  if (state !== undefined) conditions.and('j.state = ?', state);
  if (log !== undefined) conditions.and('j.log = ?', log);
  const own = 'SELECT 1 FROM attempts a WHERE a.log = j.log AND a.opened = j.opened';
  if (exceptionsOnly === true)
    conditions.and(
      `(j.state <> 'complete' OR j.out_of_order IS NOT NULL OR EXISTS (${own} AND a.exception = 1))`,
    );
  const { setup: _ofTheJob, ...ofAttempts } = keys;
  if (Object.keys(ofAttempts).length > 0) {
    const attempt = within(scope, 'a');
    ofKeys(attempt, ofAttempts, 'a', ['tool', 'person', 'part']);
    const { where, values } = attempt.all;
    conditions.and(`(j.log, j.opened) IN (SELECT a.log, a.opened FROM attempts a WHERE ${where})`, ...values);
  }
  return conditions.all;
}

function ofJob(conditions: Conditions, { job, vin, plate, fleet }: JobsFilter): void {
  if (job !== undefined) conditions.and('j.stream = ?', `job:${job}`);
  if (vin !== undefined) conditions.and('j.vin_key = ?', lookUpKey(vin));
  if (plate !== undefined) conditions.and('j.plate_key = ?', lookUpKey(plate));
  if (fleet !== undefined) conditions.and('j.fleet_key = ?', lookUpKey(fleet));
}

/**
 * The keys of what a filter names of what attempts share, looked up before: a list of numbers lets a database take the index
 * that is right. Left out is what the filter does not name.
 */
export interface Keys {
  readonly setup?: readonly number[];
  readonly tool?: readonly number[];
  readonly person?: readonly number[];
  readonly part?: readonly number[];
}
export type KeyName = keyof Keys;

export const SHARED = { setup: 'setups', tool: 'tools', person: 'people', part: 'parts' } as const;

/** What to look up, each with its conditions on its table. */
export function keysWanted({ tenant }: Scope, filter: JobsFilter): readonly (readonly [KeyName, Where])[] {
  const { specification, tool, serial, technician, part, lot } = filter;
  const of = () => new Conditions().and('tenant = ?', tenant);
  const wanted: (readonly [KeyName, Where])[] = [];
  if (specification !== undefined) {
    const key = specification.toLowerCase();
    wanted.push(['setup', of().and('specification >= ? AND specification < ?', key, `${key}~`).all]);
  }
  if (tool !== undefined || serial !== undefined) {
    const tools = of();
    if (tool !== undefined) tools.and('(id_key = ? OR serial_key = ?)', lookUpKey(tool), lookUpKey(tool));
    if (serial !== undefined) tools.and('serial = ?', serial);
    wanted.push(['tool', tools.all]);
  }
  if (technician !== undefined) wanted.push(['person', of().and('name_key = ?', lookUpKey(technician)).all]);
  if (part !== undefined || lot !== undefined) {
    const parts = of();
    if (part !== undefined) parts.and('number_key = ?', lookUpKey(part));
    if (lot !== undefined) parts.and('lot_key = ?', lookUpKey(lot));
    wanted.push(['part', parts.all]);
  }
  return wanted;
}

function ofKeys(conditions: Conditions, keys: Keys, table: 'a' | 'j', names: readonly KeyName[]): void {
  for (const name of names) {
    const some = keys[name];
    if (some !== undefined)
      conditions.and(`${table}.${name} IN (${some.map(() => '?').join(', ') || 'NULL'})`, ...some);
  }
}

/** Conditions on `attempts a`: made with the tool that was recorded under this very name or serial number, from that day on. */
export const whereUsed = (scope: Scope, tool: string, from: string): Where =>
  within(scope, 'a')
    .and(
      'a.tool IN (SELECT tool FROM tools WHERE tenant = ? AND (id = ? OR serial = ?))',
      ...[scope.tenant, tool, tool],
    )
    .and('a.at_ms >= ?', dayMs(from)).all;
