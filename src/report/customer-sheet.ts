/** The page that a customer keeps, as plain data: who did what to which vehicle, each plug OK or not, and what comes next. */

import type { LogEntry } from '../evidence/log.ts';
import type { Shop } from '../job/shop.ts';
import type { JobState } from '../job/state.ts';
import { withoutPhoneNumbers } from '../personal.ts';
import type { Condition } from '../plug/condition.ts';
import type { Specification } from '../plug/specification.ts';
import { shopPercent } from '../plug/tightening.ts';
import { phrases, w } from '../words/catalogue.ts';
import type { AttemptRow, CylinderRow } from './attempts.ts';
import { clean } from './clean.ts';
import type { Fact } from './fact.ts';
import { UNIT_TEXT } from './figures.ts';
import { localTime } from './local-time.ts';
import { positionsOf } from './positions.ts';
import type { Verdict } from './verdict.ts';
import { CONDITIONS, DAMAGE } from './words/condition.ts';

export interface CustomerSheet {
  readonly shop: {
    readonly name: string;
    readonly address: readonly string[];
    /** Empty where the shop has none. */
    readonly page: string;
    /** PNG, base64; empty where the shop has none. */
    readonly logo: string;
  };
  readonly facts: readonly Fact[];
  readonly plugs: readonly CustomerRow[];
  readonly oldPlugs: readonly OldPlugRow[];
  readonly nextChange: string;
  /** Whose names go under the page. */
  readonly signatures: readonly string[];
}

/** What counts of one plug in the end. */
export interface CustomerRow {
  readonly position: string;
  readonly verdict: Verdict;
  readonly gap: string;
  readonly torque: string;
}

export interface OldPlugRow {
  readonly position: string;
  readonly condition: Condition;
  readonly looks: string;
  /** Empty where nothing is to be done. */
  readonly advice: string;
}

export function customerSheet(
  state: JobState,
  entries: readonly LogEntry[],
  cylinders: readonly CylinderRow[],
  station: string,
): CustomerSheet {
  const opened = entries.find(({ event }) => event.type === 'job-opened');
  const { shop, utcOffsetMin = null } = opened?.event.type === 'job-opened' ? opened.event : {};
  const ended = entries.findLast(({ event }) => event.type === 'job-closed');
  const { vehicle, customer, complaint, plug } = state.order;
  const positions = positionsOf(state.order.engine);
  const fact = (label: string, value: string | undefined): Fact => ({
    label,
    value: clean(value ?? '') || w`not given`,
  });
  return {
    shop: shopText(shop, station),
    facts: [
      fact(w`Customer`, customer),
      fact(w`Vehicle`, vehicle.description),
      fact(w`Plate`, vehicle.plate),
      fact(w`VIN`, vehicle.vin),
      fact(w`Odometer`, vehicle.odometerKm === undefined ? undefined : `${vehicle.odometerKm} km`),
      ...(complaint === undefined ? [] : [fact(w`Complaint`, withoutPhoneNumbers(complaint))]),
      fact(w`New plugs`, `${positions.counted(cylinders.length)}: ${plug.part}`),
      ...shopRule(state.order.specification).map((text) => fact(w`Torque limits`, text)),
      fact(w`Started`, localTime(opened?.at ?? '', utcOffsetMin)),
      fact(w`Finished`, ended === undefined ? w`not finished` : localTime(ended.at, utcOffsetMin)),
    ],
    plugs: [...cylinders].sort(byNumber).map(({ cylinder, verdict, gaps, pulls }) => ({
      position: positions.title(cylinder),
      verdict,
      gap: lastText(gaps, 'mm'),
      torque: lastText(pulls, 'N.m'),
    })),
    oldPlugs: oldPlugRows(state, positions.title),
    nextChange: nextChange(state, ended?.at ?? null),
    signatures: [w`For the shop: ${clean(state.technician)}`, w`Customer`],
  };
}

/** A customer takes limits for the maker's unless he reads that they are not. */
function shopRule(specification: Specification): readonly string[] {
  const percent = shopPercent(specification);
  return percent === null
    ? []
    : [w`the shop's own rule, plus/minus ${percent} %; the source prints one figure`];
}

function shopText(shop: Shop | undefined, station: string): CustomerSheet['shop'] {
  return {
    name: clean(shop?.name ?? '') || clean(station),
    address:
      shop === undefined ? [w`Address of the shop: not in the record`] : (shop.address ?? []).map(clean),
    page: clean(shop?.page ?? ''),
    logo: shop?.logo ?? '',
  };
}

/** A customer does not look for his cylinder in the order of the work. */
const byNumber = (a: { readonly cylinder: number }, b: { readonly cylinder: number }) =>
  a.cylinder - b.cylinder;

/** What the verdict rests on: the last attempt that was judged, else the last one. */
function lastText(rows: readonly AttemptRow[], unit: 'N.m' | 'mm'): string {
  const last = rows.findLast(({ verdict }) => verdict !== 'not-judged') ?? rows.at(-1);
  return last === undefined ? w`not measured` : `${last.valueText} ${UNIT_TEXT[unit]}`;
}

function oldPlugRows(state: JobState, title: (position: number) => string): readonly OldPlugRow[] {
  return [...state.cylinders].sort(byNumber).flatMap(({ cylinder }) => {
    const read = state.oldPlugs[cylinder]?.read ?? null;
    if (read === null) return [];
    const { word, advice } = CONDITIONS[read.condition];
    const thread = read.thread === 'sound' ? [] : [THREAD_FOUND[read.thread]];
    const looks = [word, ...read.damage.map((one) => DAMAGE[one].words), ...thread].join(', ');
    return [{ position: title(cylinder), condition: read.condition, looks, advice }];
  });
}

/** The thread in the head, where it was not sound. */
const THREAD_FOUND = phrases({ dirty: 'thread dirty', damaged: 'thread DAMAGED' });

/** From the day on which the job was closed; only where the specification says when. */
function nextChange({ order }: JobState, closedAt: string | null): string {
  const { km, months } = order.specification.change ?? {};
  if (km === undefined && months === undefined) return w`The specification of this job does not say when.`;
  const { odometerKm } = order.vehicle;
  const distance =
    km === undefined
      ? []
      : [odometerKm === undefined ? w`after another ${km} km` : w`at ${odometerKm + km} km`];
  const day = months === undefined ? [] : [dueText(months, closedAt)];
  const which = distance.length + day.length > 1 ? w`, whichever comes first` : '';
  return w`By the specification ${[...distance, ...day].join(w` or `)}${which}.`;
}

function dueText(months: number, closedAt: string | null): string {
  if (closedAt === null) return w`after ${months} months`;
  const whole = Number(closedAt.slice(0, 4)) * 12 + Number(closedAt.slice(5, 7)) - 1 + months;
  return w`in ${`${Math.floor(whole / 12)}-${String((whole % 12) + 1).padStart(2, '0')}`}`;
}
