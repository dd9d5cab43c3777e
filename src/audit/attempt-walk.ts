import type { LogEntry } from '../evidence/log.ts';
import { earlyStepsOf, heldBy, outOfOrderIn } from '../job/early.ts';
import type { JobEventOf } from '../job/event.ts';
import { fold } from '../job/fold.ts';
import { circumstancesOf, measured, readingFor } from '../job/measurement.ts';
import type { OutOfOrder } from '../job/out-of-order.ts';
import type { CylinderState, GapAttempt, JobState, TorqueAttempt } from '../job/state.ts';
import { statementOf } from '../job/statements.ts';
import { type Stage, stageAfter } from '../job/tightening-stage.ts';
import { torqueStep } from '../job/torque-step.ts';
import type { Judgement } from '../metrology/judgement.ts';
import { rounded } from '../quantity/rounded.ts';
import type { FigureSource } from '../reading.ts';
import type { Attempt, Censored } from './attempt.ts';
import { type Setup, setupOf } from './setup.ts';

/** A job as the history keeps it. */
export interface JobHistory {
  /** The day that its verdicts rest on. */
  readonly on: string;
  readonly setup: Setup;
  readonly sources: readonly FigureSource[];
  readonly outOfOrder: readonly OutOfOrder[];
  /** In the order of their entries. */
  readonly attempts: readonly Attempt[];
}

/**
 * The attempts of a job from its entries, those of samples left out or not; null for no entries. Pulls that were given to
 * no cylinder are on the record and are no attempts. Throws where the entries do not begin with the opening of a job.
 */
export function jobHistory(entries: Iterable<LogEntry>): JobHistory | null {
  const walk = newWalk();
  let state: JobState | null = null;
  for (const entry of entries) {
    if (state !== null) walk.see(state, entry);
    state = fold(state, entry.event);
  }
  if (state === null) return null;
  const opened = state;
  const attempts = opened.cylinders.flatMap((c) => [
    ...gapAttempts(opened, walk, c.cylinder, c.gaps),
    ...pullAttempts(opened, walk, c),
  ]);
  return {
    on: opened.basis.on,
    setup: setupOf(opened),
    sources: opened.sources,
    outOfOrder: outOfOrderIn(opened),
    attempts: attempts.sort((a, b) => a.seq - b.seq),
  };
}

/** Where and when something is in the log, and who worked then. */
interface Seen {
  readonly seq: number;
  readonly at: string;
  readonly technician: string;
}

/** A plug was started again: pulls and gap readings up to these numbers were before. */
interface Restart {
  readonly pull: number;
  readonly gaps: number;
  readonly newPlug: boolean;
}

interface Walk {
  see(before: JobState, entry: LogEntry): void;
  /** When each pull was found, with the entry that placed it last. */
  readonly pulls: ReadonlyMap<number, Seen>;
  gaps(cylinder: number): readonly Seen[];
  restarts(cylinder: number): readonly Restart[];
  /** Part and lot as they were said of a cylinder's plug, the first plug being number 0. */
  said(cylinder: number, plug: number): { readonly part: string; readonly lot: string | null } | undefined;
}

/** What the fold does not keep, because nothing on the screen needs it. */
function newWalk(): Walk {
  const pulls = new Map<number, Seen>();
  const gaps = new Map<number, Seen[]>();
  const restarts = new Map<number, Restart[]>();
  const said = new Map<string, { readonly part: string; readonly lot: string | null }>();
  const push = <T>(lists: Map<number, T[]>, key: number, item: T) => {
    const list = lists.get(key);
    if (list === undefined) lists.set(key, [item]);
    else list.push(item);
  };
  const plugNow = (cylinder: number) =>
    (restarts.get(cylinder) ?? []).filter(({ newPlug }) => newPlug).length;
  return {
    see(before, { seq, at, event }) {
      const seen = { seq, at, technician: before.technician };
      const restart = restartOf(before, event);
      if (restart !== null) {
        const gapsBefore = gaps.get(restart.cylinder)?.length ?? 0;
        push(restarts, restart.cylinder, {
          pull: before.pullCount,
          gaps: gapsBefore,
          newPlug: restart.newPlug,
        });
      }
      if (event.type === 'taken-back') {
        const back = plugAgainIn(before, event);
        if (back !== null) restarts.get(back)?.pop();
      }
      if (event.type === 'pull-detected') pulls.set(event.pull, seen);
      if (event.type === 'pull-placed') pulls.set(event.pull, { ...(pulls.get(event.pull) ?? seen), seq });
      if (event.type === 'gap-measured') push(gaps, event.cylinder, seen);
      if (event.type === 'new-plugs-checked')
        for (const cylinder of event.cylinders)
          said.set(`${cylinder}/${plugNow(cylinder)}`, { part: event.part, lot: event.lot });
    },
    pulls,
    gaps: (cylinder) => gaps.get(cylinder) ?? [],
    restarts: (cylinder) => restarts.get(cylinder) ?? [],
    said: (cylinder, plug) => said.get(`${cylinder}/${plug}`),
  };
}

/** The cylinder whose plug did not come out after all; null where nothing of the kind is taken back. */
function plugAgainIn(before: JobState, event: JobEventOf<'taken-back'>): number | null {
  const one = statementOf(before, event);
  if (one?.what === 'scrapped') return one.cylinder;
  const cameOut = one?.what === 'answer' && (one.answer === 'refit' || one.answer === 'replace');
  return cameOut ? one.cylinder : null;
}

/** Whether an event takes a plug out, to go in again or to be replaced. */
function restartOf(
  before: JobState,
  event: LogEntry['event'],
): { readonly cylinder: number; readonly newPlug: boolean } | null {
  if (event.type === 'cylinder-restarted') return event;
  if (event.type === 'plug-scrapped') return { cylinder: event.cylinder, newPlug: true };
  if (event.type !== 'question-answered') return null;
  const about = before.questions.find(({ pull }) => pull === event.pull);
  if (about === undefined || (event.answer !== 'refit' && event.answer !== 'replace')) return null;
  return { cylinder: about.cylinder, newPlug: event.answer === 'replace' };
}

const numberOfPlug = (restarts: readonly Restart[], isBehind: (restart: Restart) => boolean) =>
  restarts.filter((restart) => restart.newPlug && isBehind(restart)).length;

function gapAttempts(
  state: JobState,
  walk: Walk,
  cylinder: number,
  gaps: readonly GapAttempt[],
): readonly Attempt[] {
  const restarts = walk.restarts(cylinder);
  const plugs = gaps.map((_, at) => numberOfPlug(restarts, (restart) => at >= restart.gaps));
  const plugNow = numberOfPlug(restarts, () => true);
  const standing = gaps.findLastIndex(({ takenBack }) => takenBack !== true);
  return gaps.flatMap(({ reading, tool, source, judgement }, at) => {
    const seen = walk.gaps(cylinder)[at];
    const plug = plugs[at] ?? 0;
    if (seen === undefined) return [];
    // Wires are no instrument of the job: they tell bounds and no figure.
    const instrument = state.instruments.find(({ id }) => id === tool);
    return [
      {
        ...seen,
        quantity: 'length',
        cylinder,
        number: reading,
        tool,
        source,
        kind: 'gap',
        result: judgement.result,
        side: judgement.side,
        readingSi:
          instrument === undefined ? null : readingFor(instrument, judgement.value, circumstances(state)),
        valueSi: judgement.value,
        expanded: judgement.expandedUncertainty,
        peakStandardSi: null,
        stage: 'final',
        censored: instrument === undefined ? 'bounded' : null,
        first: plugs.indexOf(plug) === at,
        last: plug === plugNow && at === standing,
        early: false,
        held: false,
        ...plugOf(state, walk, cylinder, plug),
      } as const,
    ];
  });
}

function pullAttempts(state: JobState, walk: Walk, c: CylinderState): readonly Attempt[] {
  const { cylinder, pulls } = c;
  const restarts = walk.restarts(cylinder);
  const stages = stagesOf(state, pulls, restarts);
  const plugAt = (number: number) => numberOfPlug(restarts, (restart) => number > restart.pull);
  const last = isByAngle(state, c) ? null : standing(pulls, stages, restarts.at(-1)?.pull ?? 0);
  const started = new Set<number>();
  return pulls.flatMap((attempt, i) => {
    const { pull, kind, judgement } = attempt;
    const seen = walk.pulls.get(pull.pull);
    const plug = plugAt(pull.pull);
    const stage = stages[i] === 'final' ? 'final' : 'first';
    if (seen === undefined) return [];
    const first = stage === 'final' && isTry(attempt) && !started.has(plug);
    if (first) started.add(plug);
    const known = judgement === null ? reachedAtLeast(state, attempt) : judgedAs(judgement);
    return [
      {
        ...seen,
        quantity: 'torque',
        cylinder,
        number: pull.pull,
        tool: pull.tool,
        source: pull.source,
        kind,
        result: judgement?.result ?? null,
        side: judgement?.side ?? null,
        readingSi: pull.peakNm,
        valueSi: known?.value ?? null,
        expanded: known?.expanded ?? null,
        peakStandardSi: pull.peakStandardNm,
        stage,
        censored: censoredBy(attempt),
        first,
        last: attempt === last,
        early: earlyStepsOf(state, attempt).length > 0,
        held: heldBy(state, attempt).length > 0,
        ...plugOf(state, walk, cylinder, plug),
      } as const,
    ];
  });
}

/** What a pull came to at the plug, and U. */
interface Known {
  readonly value: number;
  readonly expanded: number;
}

const judgedAs = ({ value, expandedUncertainty }: Judgement): Known => ({
  value,
  expanded: expandedUncertainty,
});

/** Of a try that was cut, or stood at the end of the scale: nobody judges it, and it came to no less. */
function reachedAtLeast(state: JobState, attempt: TorqueAttempt): Known | null {
  const { pull } = attempt;
  const instrument = state.instruments.find(({ id }) => id === pull.tool);
  const isBound = pull.cut !== null || pull.saturated;
  if (instrument === undefined || !isBound || !isTry(attempt)) return null;
  const { value, budget } = measured(instrument, pull.peakNm, circumstances(state), pull.peakStandardNm);
  return { value: rounded(value, 6), expanded: rounded(budget.expanded, 6) };
}

const circumstances = ({ basis, order }: JobState) => circumstancesOf(basis.on, order);

function plugOf(state: JobState, walk: Walk, cylinder: number, plug: number) {
  return walk.said(cylinder, plug) ?? { part: state.order.plug.part, lot: null };
}

/** A try at the torque of its plug. What turned out to be on a plug that was tight, or loosened one, is none. */
function isTry({ kind, ask }: TorqueAttempt): boolean {
  if (kind === 'unsure') return ask !== 'already-tight' && ask !== 'loosened' && ask !== 'loose';
  return kind === 'tightening' || kind === 'continuation';
}

function censoredBy({ pull, kind }: TorqueAttempt): Censored | null {
  if (pull.cut !== null) return 'cut';
  if (pull.saturated) return 'saturated';
  return kind === 'unsure' ? 'undecided' : null;
}

/** The stage of the plug at each pull; it starts again with each new plug. */
function stagesOf(
  { basis }: JobState,
  pulls: readonly TorqueAttempt[],
  restarts: readonly Restart[],
): readonly Stage[] {
  const start = basis.firstTorqueWindow === null ? 'final' : 'first';
  let stage: Stage = start;
  let before = 0;
  return pulls.map((attempt) => {
    const { pull: number } = attempt.pull;
    if (restarts.some(({ pull }) => pull >= before && pull < number)) stage = start;
    before = number;
    const at = stage;
    if (basis.firstTorqueWindow !== null) stage = stageAfter(stage, attempt);
    return at;
  });
}

/** Turned on by an angle after its last pull: what it came to nobody knows. */
const isByAngle = (state: JobState, c: CylinderState) =>
  c.settlement?.kind === 'by-angle' && torqueStep(c, state) === 'settled';

/** The judged pull that a plug stands with; null when it was backed off since, or when nobody can tell. */
function standing(
  pulls: readonly TorqueAttempt[],
  stages: readonly Stage[],
  restartedAfter: number,
): TorqueAttempt | null {
  let last: TorqueAttempt | null = null;
  for (const [i, attempt] of pulls.entries()) {
    const { pull, kind, judgement, answer } = attempt;
    if (pull.pull <= restartedAfter) continue;
    const backedOff = kind === 'loosening' || answer === 'refit' || answer === 'replace';
    if (backedOff || answer === 'unfinished' || kind === 'unsure') last = null;
    else if (judgement !== null && stages[i] === 'final') last = attempt;
  }
  return last;
}
