/** What a question to the history asks for, as SQL with parameters: nothing that came from outside becomes part of it. */
import type { AttemptFilter, JobsFilter } from '../src/audit/records.ts';
import { ANY_CENSORED, FLAG } from './attempts.ts';
import { lookUpKey } from './jobs.ts';

export interface Sql {
  readonly where: string;
  readonly values: Readonly<Record<string, string | number>>;
}

type Condition = readonly [sql: string, values: Readonly<Record<string, string | number>>];

const NOT_OK = `(a.result <> 0 OR (a.flags & ${ANY_CENSORED | FLAG.early}) <> 0)`;

/** Conditions on `attempts a` joined with `jobs j`. */
export function attemptsWhere(filter: AttemptFilter): Sql {
  const job = jobConditions(filter);
  const attempt = attemptConditions(filter);
  // SQLite would take a range of days for more selective than a join: a plus sign keeps the index from it.
  const at = job.length > 0 ? '+a.atMs' : 'a.atMs';
  return together([
    ...job,
    ...attempt,
    ...(filter.from === undefined
      ? []
      : [[`${at} >= :fromMs`, { fromMs: dayMs(filter.from) }] satisfies Condition]),
    ...(filter.to === undefined
      ? []
      : [[`${at} < :toMs`, { toMs: dayMs(filter.to) + DAY_MS }] satisfies Condition]),
    ...(filter.quantity === undefined
      ? []
      : [['a.length = :length', { length: filter.quantity === 'length' ? 1 : 0 }] satisfies Condition]),
    ...(filter.exceptionsOnly === true ? [[NOT_OK, {}] satisfies Condition] : []),
    ...(filter.afterSeq === undefined
      ? []
      : [['a.seq > :afterSeq', { afterSeq: filter.afterSeq }] satisfies Condition]),
  ]);
}

/** Conditions on `jobs j`; those on attempts hold for a job that has one such attempt. */
export function jobsWhere(filter: JobsFilter): Sql {
  const attempt = together(attemptConditions(filter));
  const opened: Condition[] = [];
  if (filter.from !== undefined) opened.push(['j.openedAt >= :from', { from: filter.from }]);
  // Every moment of that day comes before it with a tilde behind it.
  if (filter.to !== undefined) opened.push(['j.openedAt < :to', { to: `${filter.to}~` }]);
  if (filter.state !== undefined) opened.push(['j.state = :state', { state: filter.state }]);
  if (filter.exceptionsOnly === true)
    opened.push([
      `(j.state <> 'complete' OR j.outOfOrder IS NOT NULL OR EXISTS (SELECT 1 FROM attempts a WHERE a.job = j.id AND ${NOT_OK}))`,
      {},
    ]);
  if (attempt.where !== '1')
    opened.push([`j.id IN (SELECT a.job FROM attempts a WHERE ${attempt.where})`, attempt.values]);
  return together([...jobConditions(filter), ...opened]);
}

function jobConditions({ job, vin, plate, fleet, specification }: JobsFilter): readonly Condition[] {
  const conditions: Condition[] = [];
  if (job !== undefined) conditions.push(['j.stream = :stream', { stream: `job:${job}` }]);
  if (vin !== undefined) conditions.push(['j.vinKey = :vin', { vin: lookUpKey(vin) }]);
  if (plate !== undefined) conditions.push(['j.plateKey = :plate', { plate: lookUpKey(plate) }]);
  if (fleet !== undefined) conditions.push(['j.fleetKey = :fleet', { fleet: lookUpKey(fleet) }]);
  if (specification !== undefined)
    conditions.push([
      'j.setup IN (SELECT id FROM setups WHERE specification >= :key AND specification < :keyEnd)',
      { key: specification.toLowerCase(), keyEnd: `${specification.toLowerCase()}~` },
    ]);
  return conditions;
}

function attemptConditions(filter: JobsFilter): readonly Condition[] {
  const { tool, serial, technician, part, lot } = filter;
  const conditions: Condition[] = [];
  if (tool !== undefined)
    conditions.push([
      `a.tool IN (SELECT id FROM tools WHERE ${is('tool')} OR ${is('serial', 'tool')})`,
      key({ tool }),
    ]);
  if (serial !== undefined)
    conditions.push(['a.tool IN (SELECT id FROM tools WHERE serial = :serial)', { serial }]);
  if (technician !== undefined)
    conditions.push([
      `a.person IN (SELECT id FROM people WHERE ${is('name', 'technician')})`,
      key({ technician }),
    ]);
  if (part !== undefined && lot !== undefined)
    conditions.push([
      `a.part IN (SELECT id FROM parts WHERE ${is('part')} AND ${is('lot')})`,
      key({ part, lot }),
    ]);
  else if (part !== undefined)
    conditions.push([`a.part IN (SELECT id FROM parts WHERE ${is('part')})`, key({ part })]);
  else if (lot !== undefined)
    conditions.push([`a.part IN (SELECT id FROM parts WHERE ${is('lot')})`, key({ lot })]);
  return conditions;
}

/** The SQL function of {@link lookUpKey}: the tables of names are small, so each name is compared, and no index is lost by it. */
export const LOOK_UP_KEY = 'look_up_key';
const is = (column: 'tool' | 'serial' | 'name' | 'part' | 'lot', given: string = column) =>
  `${LOOK_UP_KEY}(${column}) = :${given}`;
const key = (texts: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, lookUpKey(text)]));

/** Conditions on `attempts a`: made with the tool that was recorded under this very name or serial number, from that day on. */
export const usedSince = (tool: string, from: string): Sql => ({
  where: 'a.tool IN (SELECT id FROM tools WHERE tool = :tool OR serial = :tool) AND a.atMs >= :fromMs',
  values: { tool, fromMs: dayMs(from) },
});

function together(conditions: readonly Condition[]): Sql {
  return {
    where: conditions.map(([sql]) => sql).join(' AND ') || '1',
    values: Object.assign({}, ...conditions.map(([, values]) => values)),
  };
}

const DAY_MS = 86_400_000;
const dayMs = (day: string) => Date.parse(`${day}T00:00:00.000Z`);
