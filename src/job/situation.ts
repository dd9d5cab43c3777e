/** What the rules of src/sequence have to know of a job, and which pulls hang together. All of it is read from the state. */
import type { Pull } from '../pull/pull.ts';
import type { ToolId } from '../reading.ts';
import { surelyTurned } from '../sequence/odds.ts';
import { type LastPull, type Placement, SETTLED_MS, type Situation } from '../sequence/place.ts';
import { riseShape } from '../sequence/turned.ts';
import { endsAtClick } from './click.ts';
import { toBeLoosened, torqueWindowOf } from './stage.ts';
import { comesOut, countingPulls, startedBy } from './started.ts';
import { type CylinderState, isOver, type JobState, type Question, type TorqueAttempt } from './state.ts';
import { isTrialDue, slightDropOf } from './trial.ts';
import { asWrenchReads } from './windows.ts';

export type PlacedPull = TorqueAttempt & { readonly cylinder: number | null };

/** The pull of that number and where it stands. */
export function attemptOf(state: JobState, pull: number): PlacedPull | undefined {
  return placedPulls(state).find((attempt) => attempt.pull.pull === pull);
}

function placedPulls({ cylinders, strays }: JobState): PlacedPull[] {
  return [
    ...cylinders.flatMap(({ cylinder, pulls }) => pulls.map((attempt) => ({ ...attempt, cylinder }))),
    ...strays.map((attempt) => ({ ...attempt, cylinder: null })),
  ].sort((a, b) => a.pull.pull - b.pull.pull);
}

/** `pullsBefore`: pulls of earlier sessions, whose times are on another clock. */
export function situation(state: JobState, pullsBefore: number, tool: ToolId): Situation {
  const target = state.cylinders.find(({ cylinder }) => cylinder === state.torqueTarget);
  const { lowerNm, upperNm } = asWrenchReads(state, torqueWindowOf(state, state.torqueTarget));
  const started = target === undefined ? [] : startedBy(target);
  const last = started.at(-1);
  const earlier = state.cylinders.flatMap((c) => turnedAtOnce(c, tool, lowerNm));
  return {
    target: state.torqueTarget,
    lastOpen: state.cylinders.filter(({ torque }) => !isOver(torque)).length === 1,
    started:
      last === undefined ? null : last.kind === 'run-down' && last.answer === null ? 'stroke' : 'short',
    startedNm: Math.max(0, ...started.map(({ pull }) => pull.peakNm)),
    startedTurning: started.some(({ evidence }) => surelyTurned(evidence)),
    refitted: target !== undefined && backedOut(target),
    next: nextUntouched(state),
    earlier: earlier.map(riseShape),
    usualTurns: earlier.flatMap(({ turn }) => turn?.plug?.turnedDeg ?? []),
    last: lastPull(state, pullsBefore),
    refitting: refitting(state),
    lastTight: state.lastTight,
    asking: state.questions[0]?.cylinder ?? null,
    confirming: state.questions.length > 0 && state.questions.every(({ kind }) => kind === 'by-plan'),
    planned: plannedNext(state),
    chosen: state.chosen.torque,
    jumped: jumpedTo(state) !== null,
    trial: isTrialDue(state),
    slightDrop: slightDropOf(state, tool),
    clicks: endsAtClick(state, tool),
    lowerNm,
    upperNm,
  };
}

const backedOut = (c: CylinderState): boolean => c.restartedAfter !== undefined || c.pulls.some(comesOut);

/** The next open cylinder behind the due one that nothing was pulled on. */
function nextUntouched({ cylinders, torqueTarget }: JobState): number | null {
  const due = cylinders.findIndex(({ cylinder }) => cylinder === torqueTarget);
  const next = cylinders.slice(due + 1).find((c) => !isOver(c.torque) && c.pulls.length === 0);
  return due < 0 ? null : (next?.cylinder ?? null);
}

/**
 * The due cylinder where it does not follow the last one in the order of work: a plug that was left out, or that a correction
 * opened again. Null where it follows, where somebody chose it, and where its own plug is being done again.
 */
export function jumpedTo(state: JobState): number | null {
  const { cylinders, torqueTarget, chosen, refitting } = state;
  // Strokes on the way may be at either.
  const whole = placedPulls(state).filter(({ kind }) => kind !== 'run-down');
  const last = whole.findLast(({ cylinder }) => cylinder !== null)?.cylinder ?? null;
  if (torqueTarget === null || last === null || torqueTarget === last) return null;
  if (torqueTarget === chosen.torque || torqueTarget === refitting) return null;
  const from = cylinders.findIndex(({ cylinder }) => cylinder === last);
  const next = cylinders.slice(from + 1).find(({ torque }) => !isOver(torque));
  return next?.cylinder === torqueTarget ? null : torqueTarget;
}

/** From the due cylinder on, round to the first, the one that is open and that no question is open about but that of a low pull. */
function plannedNext(state: JobState): number | null {
  const { cylinders, torqueTarget, questions } = state;
  const { lowerNm } = asWrenchReads(state, state.torqueWindow);
  const low = ({ pull, kind }: Question) =>
    kind === 'by-plan' && (attemptOf(state, pull)?.pull.peakNm ?? lowerNm) < lowerNm;
  const due = Math.max(
    0,
    cylinders.findIndex(({ cylinder }) => cylinder === torqueTarget),
  );
  const round = [...cylinders.slice(due), ...cylinders.slice(0, due)];
  const free = ({ cylinder, torque }: CylinderState) =>
    !isOver(torque) && questions.every((open) => open.cylinder !== cylinder || low(open));
  return round.find(free)?.cylinder ?? null;
}

/**
 * Whole pulls from loose to the window: what this hand's plugs look like that turn. A stroke on the way before
 * spoils it, and so does a gasket that was crushed before.
 */
function turnedAtOnce({ pulls }: CylinderState, tool: ToolId, lowerNm: number): readonly Pull[] {
  const [first] = pulls;
  if (first === undefined || first.kind !== 'tightening' || first.pull.tool !== tool) return [];
  if (first.pull.peakNm < lowerNm || first.pull.saturated || first.pull.stream === 'maxima') return [];
  const turned = surelyTurned(first.evidence) || first.given === true || first.answer === 'fresh';
  return turned ? [first.pull] : [];
}

/** A pull of this cylinder's plug in front of pull number `before` stopped short. */
export function stoppedShort(state: JobState, cylinder: number, before: number): boolean {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  if (c === undefined) return false;
  const pulls = c.pulls.filter(({ pull }) => pull.pull < before);
  return startedBy({ ...c, pulls }).some(({ kind, answer }) => kind !== 'run-down' || answer !== null);
}

/** The pull that had proven this cylinder before pull number `before`; null where none had, or where its plug came out since. */
export function provenBefore(state: JobState, before: number, cylinder: number): TorqueAttempt | null {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  if (c === undefined) return null;
  const pulls = countingPulls(c).filter(({ pull }) => pull.pull < before);
  const since = pulls.slice(pulls.findLastIndex(comesOut) + 1);
  return (
    since.findLast(
      ({ kind, judgement }) =>
        (kind === 'tightening' || kind === 'continuation') && judgement?.result === 'OK',
    ) ?? null
  );
}

/** The pulls behind pull number `after` that turned this cylinder's plug from loose, as long as it had not come out since. */
export function turnedAfter(state: JobState, after: number, cylinder: number): readonly TorqueAttempt[] {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  const since = c === undefined ? [] : countingPulls(c).filter(({ pull }) => pull.pull > after);
  const out = since.findIndex(comesOut);
  return since
    .slice(0, out < 0 ? since.length : out)
    .filter(({ kind, evidence }) => kind === 'tightening' && surelyTurned(evidence));
}

function lastPull(state: JobState, pullsBefore: number): LastPull | null {
  const attempt = placedPulls(state).findLast(({ cylinder }) => cylinder !== null);
  if (attempt === undefined || attempt.cylinder === null || attempt.pull.pull <= pullsBefore) return null;
  const { cylinder, kind, pull, evidence, judgement, turn } = attempt;
  // A pull that broke off may go on: what comes at once is another piece of it.
  const brokeOff = pull.cut === 'link-lost' && attempt.ask === 'cut';
  const ended = pull.release === 'seen' || (pull.cut !== null && !brokeOff) || pull.saturated;
  const open = kind === 'unsure' && !ended && pull.peakNm > 0;
  const tight =
    kind !== 'run-down' &&
    kind !== 'loosening' &&
    // What comes at once may go on with the turn that is still to come.
    turn?.side !== 'low' &&
    pull.peakNm >= asWrenchReads(state, state.torqueWindow).lowerNm;
  return {
    cylinder,
    endUs: pull.endUs,
    tight: tight && !open,
    short: kind === 'run-down' || (judgement?.side === 'low' && kind !== 'rehit' && kind !== 'check'),
    asked: open ? (attempt.ask ?? null) : null,
    knock: evidence?.knock ?? 0,
  };
}

const COMES_OUT: ReadonlySet<Question['kind']> = new Set(['over-window', 'cut', 'end-of-scale']);

/** The cylinder whose plug is to come out: as said, as the question that is open asks for, or as it is going on. */
function refitting(state: JobState): number | null {
  const asked = state.questions.find(({ kind }) => COMES_OUT.has(kind));
  const last = placedPulls(state).findLast(({ cylinder }) => cylinder !== null);
  const going = last?.kind === 'loosening' ? last.cylinder : null;
  return state.refitting ?? asked?.cylinder ?? toBeLoosened(state) ?? going;
}

/**
 * The pulls at one grip of the wrench with the one given: the strokes on the way before it and the re-hits behind it on
 * the same cylinder, each within the time in which nobody goes to another plug, unless it shows that somebody did.
 */
export function grip(state: JobState, number: number): readonly PlacedPull[] {
  const placed = placedPulls(state);
  const at = placed.findIndex(({ pull }) => pull.pull === number);
  const one = placed[at];
  if (one === undefined) return [];
  const pulls = placed.filter(({ cylinder, kind }) => cylinder === one.cylinder && kind !== 'handling');
  const here = pulls.findIndex(({ pull }) => pull.pull === number);
  if (here < 0 || one.because === 'turned-from-loose') return [one];
  let from = here;
  while (from > 0 && pulls[from - 1]?.kind === 'run-down' && together(pulls[from - 1], pulls[from]))
    from -= 1;
  let to = here;
  while (pulls[to + 1]?.kind === 'rehit' && together(pulls[to], pulls[to + 1])) to += 1;
  return pulls.slice(from, to + 1);
}

function together(a: PlacedPull | undefined, b: PlacedPull | undefined): boolean {
  if (a === undefined || b === undefined) return false;
  const pauseUs = b.pull.startUs - a.pull.endUs;
  return pauseUs >= 0 && pauseUs < 1000 * SETTLED_MS;
}

/**
 * Where the pulls belong if the plug of `cylinder` was passed over: from it on, those of each cylinder were on the next
 * plug of the round, and the pull in question tried the plug `on` again. What a person gave to a cylinder stays there.
 * Empty when that cannot be.
 */
export function leftOut(
  state: JobState,
  { pull: question, cylinder, on }: { readonly pull: number; readonly cylinder: number; readonly on: number },
): readonly (Placement & { readonly pull: Pull })[] {
  const asked = state.questions.find(({ pull }) => pull === question);
  const again = attemptOf(state, question);
  const from = state.cylinders.findIndex((c) => c.cylinder === cylinder);
  const to = state.cylinders.findIndex((c) => c.cylinder === asked?.cylinder);
  if (from < 0 || to <= from || again === undefined) return [];
  // What was on a plug before it came out was on this one.
  const round = state.cylinders
    .slice(from, to + 1)
    .map((c) => ({ ...c, pulls: c.pulls.slice(c.pulls.findLastIndex(comesOut) + 1) }))
    .filter(
      ({ pulls, settlement }) =>
        settlement?.kind !== 'by-angle' && !pulls.some(({ given }) => given === true),
    );
  if (round[0]?.cylinder !== cylinder || round[0].pulls.length === 0) return [];
  const because = { because: 'cylinder-left-out', leftOut: cylinder } as const;
  const moved = round.slice(0, -1).flatMap(({ pulls }, i) =>
    pulls.map(({ pull, kind, ask, evidence }) => ({
      pull,
      cylinder: round[i + 1]?.cylinder ?? null,
      kind,
      ...because,
      ...(ask === undefined ? {} : { ask }),
      ...(evidence === undefined ? {} : { evidence }),
    })),
  );
  return [...moved, { pull: again.pull, cylinder: on, kind: 'check', ...because }];
}
