import type { LogEntry } from '../evidence/log.ts';
import { isByAngle } from '../job/click.ts';
import { outOfOrderIn } from '../job/early.ts';
import type { JobEvent, JobEventOf } from '../job/event.ts';
import type { OutOfOrder } from '../job/out-of-order.ts';
import { itemsOf, NOT_DONE } from '../job/routine.ts';
import type { JobState } from '../job/state.ts';
import { statementOf, takenBackIn } from '../job/statements.ts';
import type { Judgement } from '../metrology/judgement.ts';
import { withoutPhoneNumbers } from '../personal.ts';
import type { Pull } from '../pull/pull.ts';
import { fixed, phrases, w } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { gapText, torqueText, utc, withUnit } from './figures.ts';
import { DAMAGE_WORDS, THREAD_WORDS } from './plug-words.ts';
import { VERDICT_WORD, verdictOf } from './verdict.ts';
import {
  ANSWER_GIVEN,
  CONTRADICTION_WORDS,
  choiceText,
  deviceRefusalText,
  featuresText,
  instrumentRefusalText,
  itemText,
  KIND_WORDS,
  LINK_CAVEAT,
  linkEndText,
  MISS_WORDS,
  OUT_OF_TURN_WORDS,
  openItemsText,
  outOfOrderText,
  outOfOrderWord,
  placementText,
  questionText,
  reasonWords,
  SCRAP_WORDS,
  statementWords,
  WIRE_WORDS,
} from './words/index.ts';

/** Something out of the ordinary: when, what, and the name in the entry. */
export interface ExceptionRow {
  readonly at: string;
  readonly what: string;
  readonly who: string;
  /** A reader of a verdict has to know it; the rest happened on the way. */
  readonly matters: boolean;
}

/** Everything in the job that needs an explanation, in the order in which it happened. */
export function exceptionRows(state: JobState, entries: readonly LogEntry[]): ExceptionRow[] {
  const pulls = new Map<number, Pull>();
  const placed = new Set<number>();
  const rows: ExceptionRow[] = [];
  const shown = new Set<string>();
  const early = outOfOrderIn(state);
  for (const entry of entries) {
    if (entry.event.type === 'pull-detected') pulls.set(entry.event.pull, entry.event);
    for (const text of outOfOrder(entry, entries, early))
      rows.push({ at: utc(entry.at), what: clean(text), who: clean(entry.by), matters: true });
    const what = exception(entry.event, { pulls, placed, state });
    if (entry.event.type === 'pull-placed') placed.add(entry.event.pull);
    if (what === null || (ONCE.has(entry.event.type) && shown.has(what))) continue;
    shown.add(what);
    rows.push({ at: utc(entry.at), what: clean(what), who: clean(entry.by), matters: matters(entry.event) });
  }
  return [...rows, ...stillOpen(state, entries)];
}

/** What came too early with this entry: each with the time at which its step was done behind it, or that it never was. */
function outOfOrder(
  { event, seq }: LogEntry,
  entries: readonly LogEntry[],
  early: readonly OutOfOrder[],
): readonly string[] {
  const isOf = ({ what, cylinder, pull }: OutOfOrder): boolean => {
    if (event.type === 'pull-detected') return pull === event.pull;
    if (event.type === 'gap-kept') return what === 'gap' && cylinder === event.cylinder;
    if (event.type === 'fitted-by-angle') return what === 'by-angle' && cylinder === event.cylinder;
    return event.type === 'old-plugs-read' && what === 'old-plug' && event.cylinders.includes(cylinder ?? 0);
  };
  const here = early.filter(isOf);
  if (here.length === 0) return [];
  const back = takenBackIn(entries);
  return here.map((one) => {
    const all = entries.filter((entry) => doesStep(entry.event, one) && !back.has(entry));
    const [first, last] = [all.find((entry) => entry.seq > seq), all.at(-1)];
    // A list for afterwards came before; so did a step between two strokes of one plug.
    const done =
      one.step === 'afterwards' ? (all.findLast((entry) => entry.seq < seq) ?? last) : (first ?? last);
    const when = done === undefined ? w`never` : utc(done.at);
    return `${outOfOrderWord()}: ${outOfOrderText(one)} (${when}).`;
  });
}

/** Whether this is how a step was done, on the plug in question where it is one of a plug. */
function doesStep(event: JobEvent, { step, cylinder }: OutOfOrder): boolean {
  switch (step) {
    case 'windows':
      return event.type === 'windows-confirmed';
    case 'old-plugs':
      return event.type === 'old-plugs-read' && event.cylinders.includes(cylinder ?? 0);
    case 'new-plugs':
      return (
        event.type === 'new-plugs-checked' &&
        event.differs.length === 0 &&
        event.cylinders.includes(cylinder ?? 0)
      );
    case 'gap':
      return event.type === 'gap-measured' && event.cylinder === cylinder && event.judgement.result === 'OK';
    default:
      return event.type === 'steps-attested' && event.phase === step;
  }
}

/** A tool that connects ten times, or sends a hundred unreadable values, is one exception. */
const ONCE: ReadonlySet<JobEvent['type']> = new Set<JobEvent['type']>([
  'tool-linked',
  'value-stored',
  'value-not-known',
  'raw-value',
]);

/** What happens in sound work too: links that come and go, strokes on the way, things chosen or taken back by hand. */
const ON_THE_WAY: ReadonlySet<JobEvent['type']> = new Set<JobEvent['type']>([
  'session-started',
  'tool-lost',
  'readings-missed',
  'value-stored',
  'value-not-known',
  'raw-value',
  'cylinder-chosen',
  'gap-out-of-turn',
  'wire-tried',
  'plug-scrapped',
  'cylinder-restarted',
  'question-answered',
  'trial-click-skipped',
  'taken-back',
  'job-handed-over',
]);

/** A gap or a pull matters where it failed or its end is missing. */
function matters(event: JobEvent): boolean {
  if (event.type === 'pull-placed') return event.judgement !== null && event.judgement.result !== 'OK';
  return !ON_THE_WAY.has(event.type);
}

interface SoFar {
  readonly pulls: ReadonlyMap<number, Pull>;
  /** Pulls that were placed before. */
  readonly placed: ReadonlySet<number>;
  readonly state: JobState;
}

function changeOfTool(tool: string, { toolsOf, technician }: JobState): string {
  const owner = toolsOf[tool];
  const hands =
    owner === undefined || owner === technician
      ? ''
      : w`; at work from here on: ${owner}, after ${technician}`;
  return w`${tool} in use from here on${hands}.`;
}

function exception(event: JobEvent, soFar: SoFar): string | null {
  switch (event.type) {
    case 'session-started':
      return event.session > 1 ? w`Program started again on this job (session ${event.session}).` : null;
    case 'tool-linked':
      return linkException(event, soFar.state);
    case 'tool-in-use':
      return changeOfTool(event.tool, soFar.state);
    case 'technician-at-work':
      return w`At work from here on: ${event.person}, after ${soFar.state.technician}.`;
    case 'tool-lost':
      return w`Link to ${event.tool} lost: ${linkEndText(event)}.`;
    case 'readings-missed':
      return w`Readings of ${event.tool} missed for ${fixed((event.toUs - event.fromUs) / 1e6, 2)} s: ${MISS_WORDS[event.reason]}.`;
    case 'value-stored':
      return w`${event.tool} sent readings from its memory. They are kept, and belong to no cylinder.`;
    case 'device-refused':
      return w`Refused for ${event.tool}: ${deviceRefusalText(event)}.`;
    case 'profile-contradicted':
      return w`${event.tool} stopped: ${CONTRADICTION_WORDS[event.because]}. Nothing counts that it read from here on.`;
    case 'value-not-known':
      return w`${event.tool} sent at least one reading without a value.`;
    case 'raw-value':
      return w`${event.tool} sent values in an unknown layout (${event.source}). They are kept as bytes and not judged.`;
    case 'gap-measured':
      return event.judgement.result === 'OK'
        ? null
        : w`Cylinder ${event.cylinder}, gap: ${judged(event.judgement, 'mm')}.`;
    case 'pull-placed':
      return pullException(event, soFar);
    case 'cylinder-chosen':
      return event.quantity === 'old-plug'
        ? null
        : event.quantity === 'torque'
          ? w`Next pull given to cylinder ${event.cylinder} by hand.`
          : w`Next gap given to cylinder ${event.cylinder} by hand.`;
    case 'instrument-overridden':
      return w`${event.tool} used although ${instrumentRefusalText(event.refusal)}. Answered for by ${event.by}${reason(event.reason)}.`;
    case 'uncertainty-declared':
      return w`${event.tool} reported a larger uncertainty than the station lists. From here on it is judged by that.`;
    case 'gap-out-of-turn':
      return w`Gap ${gapText(event.gapMm)} was measured out of its turn and given to no plug: ${OUT_OF_TURN_WORDS[event.because]}.`;
    case 'gap-kept':
      return w`Cylinder ${event.cylinder}, gap: measured out of its turn and kept, NOT proven. Answered for by ${event.by}: ${withoutPhoneNumbers(reasonWords(event.reason))}.`;
    case 'gap-inspected':
      return w`Cylinder ${event.cylinder}, gap: only looked at, as the specification says; ${event.sound ? w`sound` : w`not sound`}.`;
    case 'wire-tried':
      return w`Cylinder ${event.cylinder}, gap by wires: ${WIRE_WORDS[event.outcome]}.`;
    case 'plug-scrapped':
      return w`Plug for cylinder ${event.cylinder} thrown away: ${SCRAP_WORDS[event.reason]}.`;
    case 'pull-given':
      return w`Pull ${event.pull} given to cylinder ${event.cylinder} by hand${reason(event.why)}.`;
    case 'cylinder-left-out':
      return w`Cylinder ${event.cylinder} was left out; the pulls after it moved on by one${reason(event.why)}.`;
    case 'cylinder-restarted':
      return event.newPlug
        ? w`Cylinder ${event.cylinder} backed off to start again with a new plug${reason(event.why)}.`
        : w`Cylinder ${event.cylinder} backed off to start again${reason(event.why)}.`;
    case 'question-answered':
      return w`Question on pull ${event.pull} answered: ${ANSWER_GIVEN[event.answer]}.`;
    case 'trial-click-skipped':
      return w`The trial click was passed over.`;
    case 'steps-attested':
      return notDone(event, soFar.state);
    case 'old-plugs-read':
      return oldPlugException(event);
    case 'new-plugs-checked':
      return event.differs.length === 0
        ? null
        : w`${cylindersText(event.cylinders)}: the new plug (${event.part}) differs in ${featuresText(event.differs)}.`;
    case 'taken-back':
      return w`Taken back: ${takenBackText(soFar.state, event)}${reason(event.why)}.`;
    case 'fitted-by-angle':
      return isByAngle(soFar.state.basis)
        ? w`Cylinder ${event.cylinder} fitted by angle (${event.turn}), NOT proven${reason(event.why)}.`
        : w`Cylinder ${event.cylinder} fitted by angle (${event.turn}), NOT proven by torque${reason(event.why)}.`;
    case 'pull-accepted':
      return isOk(soFar.state, event.pull)
        ? w`Cylinder ${event.cylinder}, pull ${event.pull}: out of order, left as it is. Answered for by ${event.by}${reason(event.reason)}.`
        : w`Cylinder ${event.cylinder}, pull ${event.pull}: over the window, left as it is. Answered for by ${event.by}${reason(event.reason)}.`;
    case 'job-handed-over':
      return w`Handed over to ${event.to}.`;
    case 'job-voided':
      return w`Job declared VOID by ${event.by}${reason(event.reason)}.`;
    case 'job-closed':
      return event.complete
        ? null
        : w`Closed and accepted with work open: ${openItemsText(event.open) || w`not named`}.`;
    case 'job-opened':
    case 'readings':
    case 'tool-silent':
    case 'pull-detected':
    case 'windows-confirmed':
    case 'old-gap-measured':
    case 'removal-felt':
      return null;
  }
}

function takenBackText(state: JobState, event: JobEventOf<'taken-back'>): string {
  const one = statementOf(state, event);
  return one === undefined ? w`number ${event.said}` : statementWords(one);
}

const isOk = ({ cylinders }: JobState, number: number): boolean =>
  cylinders.some(({ pulls }) =>
    pulls.some(({ pull, judgement }) => pull.pull === number && judgement?.result === 'OK'),
  );

const cylindersText = (cylinders: readonly number[]): string =>
  cylinders.length > 1 ? w`Cylinders ${cylinders.join(', ')}` : w`Cylinder ${cylinders.join(', ')}`;

/** Steps that were left out, each with its reason. */
function notDone({ phase, steps }: JobEventOf<'steps-attested'>, { routine }: JobState): string | null {
  const items = routine === null ? [] : itemsOf(routine, phase);
  const of = (item: string) => items.find(({ id }) => id === item);
  const textOf = (item: string) => {
    const listed = of(item);
    return listed === undefined ? item : itemText(listed);
  };
  const left = steps.flatMap(({ item, as, why }) =>
    as === NOT_DONE
      ? [`${textOf(item)}${why === undefined ? '' : ` (${withoutPhoneNumbers(reasonWords(why))})`}`]
      : [],
  );
  const notable = steps.flatMap(({ item, as }) =>
    of(item)?.notable?.includes(as) === true ? [`${textOf(item)}: ${choiceText(of(item), as)}.`] : [],
  );
  const words = [...(left.length === 0 ? [] : [w`Not done: ${left.join('; ')}.`]), ...notable];
  return words.length === 0 ? null : words.join(' ');
}

/** A plug that came out broken, or a thread that was not sound. */
function oldPlugException(event: JobEventOf<'old-plugs-read'>): string | null {
  const { cylinders, damage, thread, note } = event;
  const faults = [
    ...damage.map((one) => DAMAGE_WORDS[one]),
    ...(thread === 'sound' ? [] : [w`thread ${THREAD_WORDS[thread]}`]),
  ];
  if (faults.length === 0) return null;
  return w`${cylindersText(cylinders)}, on removal: ${faults.join(', ')}${reason(note ?? '')}.`;
}

const reason = (why: string): string => (why === '' ? '' : `: ${withoutPhoneNumbers(reasonWords(why))}`);

function linkException(
  { tool, source, description }: JobEventOf<'tool-linked'>,
  state: JobState,
): string | null {
  const listed = state.instruments.find(({ id }) => id === tool)?.serial;
  const problems: string[] = [];
  const caveat = LINK_CAVEAT[source];
  if (caveat !== null) problems.push(caveat);
  else if (!description.link.authenticated)
    problems.push(w`link not authenticated: another device could pretend to be this tool`);
  if (listed !== undefined && description.serial !== undefined && listed !== description.serial)
    problems.push(w`reports serial ${description.serial}, the station lists ${listed}`);
  return problems.length === 0 ? null : `${tool}: ${problems.join('; ')}.`;
}

function pullException(event: JobEventOf<'pull-placed'>, soFar: SoFar): string | null {
  const pull = soFar.pulls.get(event.pull);
  const again = soFar.placed.has(event.pull);
  const { judgement, kind } = event;
  const failed = judgement !== null && judgement.result !== 'OK';
  const usual = kind === 'tightening' || kind === 'run-down';
  if (usual && !failed && !again && event.cylinder !== null && (pull?.cut ?? null) === null) return null;
  const where = event.cylinder === null ? w`on no cylinder` : w`cylinder ${event.cylinder}`;
  const peak = pull === undefined ? '' : w`, peak ${torqueText(pull.peakNm)}`;
  const cut = pull?.cut ? `, ${CUT[pull.cut]}` : '';
  const result = judgement === null ? '' : `: ${judged(judgement, 'N.m')}`;
  const why = pull === undefined ? '' : ` (${placementText({ ...event, pull })})`;
  const rest = `${where}, ${KIND_WORDS[kind]}${why}${peak}${cut}${result}.`;
  return again ? w`Pull ${event.pull} placed again, ${rest}` : w`Pull ${event.pull}, ${rest}`;
}

const CUT = phrases({
  'link-lost': 'cut off when the link was lost',
  stopped: 'cut off when the program stopped',
  'tool-stopped': 'cut off when the tool was stopped',
});

function judged(judgement: Judgement, unit: 'N.m' | 'mm'): string {
  const side = {
    inside: w`inside the acceptance zone`,
    low: w`below the acceptance zone`,
    high: w`above the acceptance zone`,
  };
  return w`${VERDICT_WORD[verdictOf(judgement)]}, ${withUnit(judgement.value, unit)} is ${side[judgement.side]}`;
}

function stillOpen(state: JobState, entries: readonly LogEntry[]): ExceptionRow[] {
  const at = utc(entries.at(-1)?.at ?? '');
  const rows = state.questions.map(
    (question) => w`Question on pull ${question.pull} not answered: ${questionText(state, question)}`,
  );
  if (state.closed === null) rows.push(w`The job is not closed.`);
  return rows.map((what) => ({ at, what: clean(what), who: w`nobody yet`, matters: true }));
}
