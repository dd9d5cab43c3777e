/** The work around the torque as the paper shows it: what was attested, and which plug went where. */

import type { LogEntry } from '../evidence/log.ts';
import { DONE, itemsOf, type ListPhase, NOT_DONE, type RoutineItem } from '../job/routine.ts';
import type { JobState, OldPlug } from '../job/state.ts';
import { withoutPhoneNumbers } from '../personal.ts';
import { phrases, w } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { figure, utc } from './figures.ts';
import { CONDITION_WORDS, DAMAGE_WORDS, THREAD_WORDS } from './plug-words.ts';
import { choiceText, itemText, noted, reasonWords } from './words/index.ts';

export interface AttestedList {
  readonly title: string;
  /** Who said it, and when. */
  readonly by: string;
  /** Each item with what was said of it. */
  readonly items: readonly string[];
}

/** One cylinder's plugs, old and new; every text empty where nothing is known. */
export interface PlugRow {
  readonly cylinder: number;
  readonly condition: string;
  readonly damage: string;
  readonly thread: string;
  readonly gapMm: string;
  readonly removalNm: string;
  readonly part: string;
  readonly lot: string;
}

export interface ChecklistEvent {
  readonly lists: readonly AttestedList[];
  readonly plugs: readonly PlugRow[];
}

const TITLES: Readonly<Record<ListPhase, string>> = phrases({
  'before-removal': 'Before removal',
  fitting: 'Before fitting',
  afterwards: 'Afterwards',
});

/** What a job without a routine leaves empty. The last word on each list holds. */
export function around(state: JobState, entries: readonly LogEntry[]): ChecklistEvent {
  const lists = (Object.keys(TITLES) as ListPhase[]).flatMap((phase) => attestedList(phase, state, entries));
  const known = state.cylinders.some(
    ({ cylinder }) => state.oldPlugs[cylinder] !== undefined || state.newPlugs[cylinder] !== undefined,
  );
  return { lists, plugs: known ? state.cylinders.map(({ cylinder }) => plugRow(cylinder, state)) : [] };
}

function attestedList(
  phase: ListPhase,
  { routine, attested }: JobState,
  entries: readonly LogEntry[],
): AttestedList[] {
  const last = entries.findLast(({ event }) => event.type === 'steps-attested' && event.phase === phase);
  if (routine === null || last === undefined) return [];
  const items = itemsOf(routine, phase).map((item) => {
    const said = Object.hasOwn(attested, item.id) ? attested[item.id] : undefined;
    return clean(`${itemText(item)}: ${saidText(item, said)}`);
  });
  const together = last.event.type === 'steps-attested' && last.event.together === true;
  const by = clean(`${last.by}, ${utc(last.at)}${together ? w`, all answered at once` : ''}`);
  return [{ title: TITLES[phase], by, items }];
}

function saidText(item: RoutineItem, said: JobState['attested'][string] | undefined): string {
  if (said === undefined) return w`nothing said`;
  if (said.as === DONE) return w`yes`;
  const as = said.as === NOT_DONE ? w`NOT DONE` : choiceText(item, said.as);
  return said.why === undefined ? as : `${as} (${withoutPhoneNumbers(reasonWords(said.why))})`;
}

function plugRow(cylinder: number, state: JobState): PlugRow {
  const old = state.oldPlugs[cylinder];
  const fresh = state.newPlugs[cylinder];
  return {
    cylinder,
    condition: old?.read == null ? '' : CONDITION_WORDS[old.read.condition],
    damage: (old?.read?.damage ?? []).map((one) => DAMAGE_WORDS[one]).join(', '),
    thread: old?.read == null ? '' : THREAD_WORDS[old.read.thread],
    gapMm: old?.gap == null ? '' : noted(figure(old.gap.gapMm, 'mm'), old.gap.source),
    removalNm: removalText(old, state),
    part: clean(fresh?.part ?? ''),
    lot: clean(fresh?.lot ?? ''),
  };
}

function removalText(old: OldPlug | undefined, state: JobState): string {
  const attempts = [...state.strays, ...state.cylinders.flatMap(({ pulls }) => pulls)];
  const felt = attempts.find(({ pull }) => pull.pull === old?.removal);
  return felt === undefined ? '' : figure(Math.abs(felt.pull.peakNm), 'N.m');
}
