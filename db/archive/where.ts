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
export function whereAttempts(scope: Scope, filter: AttemptFilter): Where {
  const conditions = within(scope, 'a');
  ofJob(conditions, filter);
  ofSetup(conditions, scope, filter, 'a');
  ofAttempt(conditions, scope, filter);
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
export function whereJobs(scope: Scope, filter: JobsFilter): Where {
  // A job without a state cannot be read.
  const conditions = within(scope, 'j').and('j.state IS NOT NULL');
  ofJob(conditions, filter);
  ofSetup(conditions, scope, filter, 'j');
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
  const attempt = within(scope, 'a');
  ofAttempt(attempt, scope, filter);
  const { where, values } = attempt.all;
  const { tool, serial, technician, part, lot } = filter;
  if ([tool, serial, technician, part, lot].some((one) => one !== undefined))
    conditions.and(`(j.log, j.opened) IN (SELECT a.log, a.opened FROM attempts a WHERE ${where})`, ...values);
  return conditions.all;
}

function ofJob(conditions: Conditions, { job, vin, plate, fleet }: JobsFilter): void {
  if (job !== undefined) conditions.and('j.stream = ?', `job:${job}`);
  if (vin !== undefined) conditions.and('j.vin_key = ?', lookUpKey(vin));
  if (plate !== undefined) conditions.and('j.plate_key = ?', lookUpKey(plate));
  if (fleet !== undefined) conditions.and('j.fleet_key = ?', lookUpKey(fleet));
}

function ofSetup(
  conditions: Conditions,
  { tenant }: Scope,
  { specification }: JobsFilter,
  table: 'a' | 'j',
): void {
  if (specification === undefined) return;
  const key = specification.toLowerCase();
  conditions.and(
    `${table}.setup IN (SELECT setup FROM setups WHERE tenant = ? AND specification >= ? AND specification < ?)`,
    ...[tenant, key, `${key}~`],
  );
}

function ofAttempt(conditions: Conditions, { tenant }: Scope, filter: JobsFilter): void {
  const { tool, serial, technician, part, lot } = filter;
  if (tool !== undefined)
    conditions.and(
      'a.tool IN (SELECT tool FROM tools WHERE tenant = ? AND (id_key = ? OR serial_key = ?))',
      ...[tenant, lookUpKey(tool), lookUpKey(tool)],
    );
  if (serial !== undefined)
    conditions.and('a.tool IN (SELECT tool FROM tools WHERE tenant = ? AND serial = ?)', tenant, serial);
  if (technician !== undefined)
    conditions.and(
      'a.person IN (SELECT person FROM people WHERE tenant = ? AND name_key = ?)',
      ...[tenant, lookUpKey(technician)],
    );
  if (part === undefined && lot === undefined) return;
  const kept = new Conditions().and('tenant = ?', tenant);
  if (part !== undefined) kept.and('number_key = ?', lookUpKey(part));
  if (lot !== undefined) kept.and('lot_key = ?', lookUpKey(lot));
  const { where, values } = kept.all;
  conditions.and(`a.part IN (SELECT part FROM parts WHERE ${where})`, ...values);
}

/** Conditions on `attempts a`: made with the tool that was recorded under this very name or serial number, from that day on. */
export const whereUsed = (scope: Scope, tool: string, from: string): Where =>
  within(scope, 'a')
    .and(
      'a.tool IN (SELECT tool FROM tools WHERE tenant = ? AND (id = ? OR serial = ?))',
      ...[scope.tenant, tool, tool],
    )
    .and('a.at_ms >= ?', dayMs(from)).all;
