/** What went otherwise than planned, each as one clear question after the other (src/ui/form.ts). */
import { isByAngle } from '../job/click.ts';
import type { Command } from '../job/command.ts';
import { isFitted } from '../job/early.ts';
import { scrapReasonSchema } from '../job/event.ts';
import type { ReasonCode } from '../job/reason.ts';
import { leftOut } from '../job/situation.ts';
import { isOver, type JobState, type Question } from '../job/state.ts';
import { referenceTo } from '../job/statements.ts';
import { damageSchema } from '../plug/condition.ts';
import { type SeatTurn, seatTurn } from '../plug/seat-turn.ts';
import { typedTurn } from '../plug/typed-turn.ts';
import { gapText, torqueText } from '../quantity/shown.ts';
import { DAMAGE } from '../report/words/condition.ts';
import { reasonWords, SCRAP_WORDS, SEAT_TURN_WORDS, statementWords } from '../report/words/index.ts';
import { called } from '../sequence/plan.ts';
import { w } from '../words/catalogue.ts';
import { type Form, type FormKind, newForm, type Option, type Typed, type Wanted } from './form.ts';
import { capital } from './words.ts';

const LONGEST = 200;

/** When each pull was on disk, by its number, in the shop's time; the state of a job knows no time of day. */
export type PullTimes = ReadonlyMap<number, string>;

const inWords = (words: readonly string[]): Option[] => words.map((value) => ({ words: value, value }));

const REASONS = {
  'give-pull': ['wrench-was-on-that-plug', 'wrong-cylinder-chosen'],
  'left-out': ['only-finger-tight', 'not-fitted-yet'],
  'start-again': ['thread-or-seat-to-look-at', 'pull-not-clean', 'plug-damaged'],
  accept: ['thread-and-seat-sound', 'service-information-allows-it'],
  early: ['done-in-time-confirmed-late', 'order-does-not-matter-here'],
  'take-back': ['wrong-key-pressed', 'measured-or-read-again', 'was-another-cylinder'],
  'fit-by-angle': ['no-room-for-the-wrench', 'no-adapter-reaches-it'],
  'turned-by-hand': ['wrench-sends-no-angle', 'no-room-for-the-wrench'],
  'not-done': ['does-not-apply-to-this-engine', 'done-before-the-job-was-opened', 'cannot-be-done-here'],
} as const satisfies Readonly<Record<string, readonly ReasonCode[]>>;

type WithReason = keyof typeof REASONS;

/** The last question of most forms: why, by a key or in own words. */
function why(kind: WithReason, ask: string): Wanted {
  const typed: Typed = {
    label: w`Reason`,
    most: LONGEST,
    fault: (text) => (text === '' ? w`A few words, please.` : null),
  };
  const options = REASONS[kind].map((value) => ({ words: reasonWords(value), value }));
  return { want: 'answer', ask, options, typed };
}

const line = (ask: string, typed: Typed): Wanted => ({ want: 'answer', ask, options: [], typed });

function cylinderLine(job: JobState, ask: string, start: number | null): Wanted {
  const numbers = job.cylinders.map(({ cylinder }) => cylinder);
  return line(ask, {
    label: w`Cylinder`,
    most: 2,
    start: start === null ? '' : String(start),
    fault: (text) =>
      numbers.includes(Number(text))
        ? null
        : w`This engine has no cylinder "${text}". It has ${numbers.join(', ')}.`,
  });
}

const nameLine = (ask: string): Wanted =>
  line(ask, { label: w`Name`, most: 80, fault: (text) => (text === '' ? w`A name, please.` : null) });

const asCommand = (command: Command): Wanted => ({ want: 'command', command });

const questionAbout = (job: JobState, pull: number): Question | undefined =>
  job.questions.find((open) => open.pull === pull);

/** The pulls of a job, the newest first, each with its place. */
function pullsOf({ cylinders, strays }: JobState) {
  const placed = cylinders.flatMap(({ cylinder, pulls }) =>
    pulls.map((attempt) => ({ ...attempt, cylinder })),
  );
  return [...placed, ...strays.map((attempt) => ({ ...attempt, cylinder: null }))].sort(
    (a, b) => b.pull.pull - a.pull.pull,
  );
}

/** `26.60 N·m, 14:03:12, on cylinder 7`: what a person knows a pull by. */
function pullWords(job: JobState, number: number, times: PullTimes): string {
  const one = pullsOf(job).find(({ pull }) => pull.pull === number);
  const value = one === undefined ? w`pull ${number}` : torqueText(one.pull.peakNm);
  const at = times.get(number);
  const where =
    one === undefined ? '' : one.cylinder === null ? w`, on no plug` : w`, on cylinder ${one.cylinder}`;
  return `${value}${at === undefined ? '' : `, ${at}`}${where}`;
}

function givePull({ answers }: Form, job: JobState, times: PullTimes): Wanted {
  const [pull, cylinder, reason] = answers;
  if (pull === undefined)
    return {
      want: 'answer',
      ask: w`Which pull was on another plug? The last one is first.`,
      options: pullsOf(job).map(({ pull: { pull: number } }) => ({
        words: pullWords(job, number, times),
        value: String(number),
      })),
      typed: null,
    };
  const which = pullWords(job, Number(pull), times);
  if (cylinder === undefined) return cylinderLine(job, w`On which cylinder was this pull: ${which}?`, null);
  if (reason === undefined)
    return why('give-pull', w`Why does this pull (${which}) belong to cylinder ${cylinder}?`);
  return asCommand({ do: 'give-pull', pull: Number(pull), cylinder: Number(cylinder), why: reason });
}

function leftOutForm({ about, answers }: Form, job: JobState): Wanted {
  const pull = Number(about);
  const [cylinder, on, reason] = answers;
  if (cylinder === undefined)
    return cylinderLine(job, w`Which cylinder was left out? Its plug is not tight.`, null);
  if (on === undefined)
    return cylinderLine(
      job,
      w`On which tight plug was pull ${pull}?`,
      questionAbout(job, pull)?.cylinder ?? null,
    );
  if (reason === undefined)
    return why('left-out', w`How do you know that cylinder ${cylinder} was left out?`);
  return asCommand({ do: 'left-out', pull, cylinder: Number(cylinder), on: Number(on), why: reason });
}

const newOrNot = (): readonly Option[] => [
  { words: w`the same plug goes in again`, value: 'same' },
  { words: w`a new plug takes its place`, value: 'new' },
];

function startAgain({ answers }: Form, job: JobState): Wanted {
  const [cylinder, plug, reason] = answers;
  if (cylinder === undefined)
    return cylinderLine(
      job,
      w`Which plug do you take out and start again?`,
      job.lastTight ?? job.torqueTarget,
    );
  if (plug === undefined)
    return {
      want: 'answer',
      ask: w`Back the plug of ${called(job.order.engine, Number(cylinder))} out; what it had proven counts no more. What goes in?`,
      options: newOrNot(),
      typed: null,
    };
  if (reason === undefined) return why('start-again', w`Why is cylinder ${cylinder} started again?`);
  return asCommand({ do: 'start-again', cylinder: Number(cylinder), newPlug: plug === 'new', why: reason });
}

/** What may be left as it is, not proven, where somebody answers for it by name. */
export const canStay = (question: Question | undefined): question is Question =>
  question?.kind === 'over-window' || question?.kind === 'early';

function accept({ about, answers }: Form, job: JobState): Wanted {
  const pull = Number(about);
  const [by, reason] = answers;
  const question = questionAbout(job, pull);
  const where = question?.cylinder;
  const early = question?.kind === 'early';
  const name = where === undefined ? w`pull ${pull}` : called(job.order.engine, where);
  if (by === undefined)
    return nameLine(
      early
        ? w`${capital(name)} stays as it is, out of order: who answers for it? It does not count as proven.`
        : w`${capital(name)} stays as it is, over the window: who answers for it? It does not count as proven.`,
    );
  if (reason === undefined) return why(early ? 'early' : 'accept', w`Why may ${name} stay as it is?`);
  return asCommand({ do: 'accept', pull, by, reason });
}

function fitByAngle({ answers }: Form, job: JobState): Wanted {
  const [cylinder, turn, reason] = answers;
  if (cylinder === undefined)
    return cylinderLine(
      job,
      isByAngle(job.basis)
        ? w`Which plug did you turn by hand? It will not count as proven.`
        : w`Which plug can no torque wrench reach? It will not count as proven by torque.`,
      job.torqueTarget,
    );
  const { specification, plug } = job.order;
  const advised = seatTurn(plug);
  if (turn === undefined)
    return line(
      w`How far did you turn cylinder ${cylinder} from finger-tight? ${turnAdvice(specification.angle, advised)}`,
      {
        label: w`Turn`,
        most: 40,
        start: isByAngle(job.basis) ? specification.torque.slice(0, 40) : (specification.angle ?? ''),
        fault: (text) => {
          const read = typedTurn(text);
          return read.ok ? null : read.error;
        },
      },
    );
  if (reason === undefined)
    return why(
      isByAngle(job.basis) ? 'turned-by-hand' : 'fit-by-angle',
      isByAngle(job.basis)
        ? w`Why was cylinder ${cylinder} not turned with a wrench that sends its angle?`
        : w`Why was cylinder ${cylinder} not pulled with the wrench?`,
    );
  const read = typedTurn(turn);
  if (!read.ok) throw new Error(`a turn was taken that is none: ${read.error}`);
  return asCommand({ do: 'fit-by-angle', cylinder: Number(cylinder), turn: read.value, why: reason });
}

/** The order's own turn goes first; else that of the seat, with who says so. */
const turnAdvice = (ofOrder: string | undefined, advised: SeatTurn): string =>
  ofOrder === undefined
    ? `${w`${SEAT_TURN_WORDS[advised.seat]}: ${advised.turn} (${advised.cited}; the box goes first).`} ${lessAccurate()}`
    : `${w`The order says ${ofOrder}.`} ${lessAccurate()}`;

const lessAccurate = (): string => w`Less accurate than a torque, and not proven.`;

/** Nothing goes to the scrap by one key: the question says what follows. */
function scrap({ about, answers }: Form, job: JobState): Wanted {
  const cylinder = Number(about);
  const [reason] = scrapReasonSchema.options.filter((one) => one === answers[0]);
  if (reason !== undefined) return asCommand({ do: 'scrap-plug', cylinder, reason });
  const isOut = job.plugs[cylinder]?.step?.do === 'replace';
  const fitted = job.cylinders.some((c) => c.cylinder === cylinder && isFitted(c));
  const reasons = [...scrapReasonSchema.options].sort(
    (a, b) => Number(isOut && b === 'gap') - Number(isOut && a === 'gap'),
  );
  return {
    want: 'answer',
    ask: fitted
      ? w`Discard the plug for ${called(job.order.engine, cylinder)}? A new one takes its place. It comes out, and gap and torque start again. Why?`
      : w`Discard the plug for ${called(job.order.engine, cylinder)}? A new one takes its place. Its gap is measured anew. Why?`,
    options: reasons.map((one) => ({
      words: SCRAP_WORDS[one],
      value: one,
    })),
    typed: null,
  };
}

/** The answer that throws the plug away, asked once with what follows. */
function replace({ about, answers }: Form, job: JobState): Wanted {
  const pull = Number(about);
  const where = questionAbout(job, pull)?.cylinder;
  const name = where === undefined ? w`pull ${pull}` : called(job.order.engine, where);
  if (answers.length > 0) return asCommand({ do: 'answer', pull, answer: 'replace' });
  return {
    want: 'answer',
    ask: w`Discard the plug of ${name}? Back it out. A new one takes its place, and its check, gap and torque start again.`,
    options: inWords([w`yes, it is discarded`]),
    typed: null,
  };
}

/** A gap that came before its turn stays with a named person and a reason, and is not proven. */
function keepGap({ answers }: Form, job: JobState): Wanted {
  const [cylinder, by, reason] = answers;
  const { tooEarly } = job;
  const gap = tooEarly?.what === 'gap' ? gapText(tooEarly.gapMm) : '';
  if (cylinder === undefined)
    return cylinderLine(
      job,
      w`Keep the gap ${gap} though it came too early? It does not count as proven. Of which cylinder is it?`,
      job.gapTarget,
    );
  if (by === undefined) return nameLine(w`Gap ${gap} for cylinder ${cylinder} stays: who answers for it?`);
  if (reason === undefined) return why('early', w`Why may the gap for cylinder ${cylinder} stay?`);
  return asCommand({ do: 'keep-gap', cylinder: Number(cylinder), by, reason });
}

/** All that was stated and stands, the newest first. */
function takeBack({ answers }: Form, job: JobState): Wanted {
  const [number, reason] = answers;
  const standing = job.statements
    .map((statement, i) => ({ statement, number: i + 1 }))
    .filter(({ statement }) => statement.takenBack !== true)
    .reverse();
  const one = job.statements[Number(number) - 1];
  if (number === undefined || one === undefined)
    return {
      want: 'answer',
      ask: w`Take back what? It stays on the record and counts no more; then it is asked anew. The last one is first.`,
      options: standing.map(({ statement, number: value }) => ({
        words: statementWords(statement),
        value: String(value),
      })),
      typed: null,
    };
  if (reason === undefined) return why('take-back', w`Why do you take this back: ${statementWords(one)}?`);
  return asCommand({ do: 'take-back', ...referenceTo(job, Number(number)), why: reason });
}

interface Way extends Option {
  readonly value: FormKind;
  /** Null where it cannot happen now. */
  readonly about: number | string | null;
}

/** The exceptions that can be told now, each with its key. */
export function exceptionsNow(job: JobState): readonly Way[] {
  const question = job.questions[0];
  const open = job.cylinders.some(({ torque }) => !isOver(torque));
  const passed = question !== undefined && passedOver(job, question.pull);
  const all: readonly Way[] = [
    {
      words: w`a pull was on another cylinder`,
      value: 'give-pull',
      about: job.pullCount > 0 ? '' : null,
    },
    { words: w`a cylinder was left out`, value: 'left-out', about: passed ? question.pull : null },
    {
      words: w`take a plug out and start again`,
      value: 'start-again',
      about: job.pullCount > 0 && question === undefined ? '' : null,
    },
    {
      words: w`leave it as it is: a named person answers for it`,
      value: 'accept',
      about: canStay(question) ? question.pull : null,
    },
    {
      words: isByAngle(job.basis)
        ? w`a plug was turned by hand: no wrench measured it`
        : w`no torque wrench reaches a plug: fit it by angle`,
      value: 'fit-by-angle',
      about: open ? '' : null,
    },
    { words: w`hand the job over to somebody else`, value: 'hand-over', about: '' },
    {
      words: w`somebody else is at work now, the job stays with its technician`,
      value: 'at-work',
      about: '',
    },
  ];
  return all.filter(({ about }) => about !== null);
}

/** Some cylinder could have been passed over before this pull. */
const passedOver = (job: JobState, pull: number): boolean =>
  job.cylinders.some(({ cylinder }) => leftOut(job, { pull, cylinder, on: cylinder }).length > 0);

function exceptions({ answers }: Form, job: JobState): Wanted {
  const ways = exceptionsNow(job);
  const chosen = ways.find(({ value }) => value === answers[0]);
  if (chosen !== undefined) return { want: 'form', form: newForm(chosen.value, chosen.about ?? '') };
  return { want: 'answer', ask: w`What did not go as planned?`, options: ways, typed: null };
}

/** Those of whom the job knows by one key; anybody else by name. */
function atWork({ order, toolsOf, cylinders, technician }: JobState): Wanted {
  const worked = cylinders.flatMap(({ gaps, pulls }) => [...gaps, ...pulls].map((one) => one.technician));
  const others = [...new Set([order.technician, ...Object.values(toolsOf), ...worked])];
  return {
    want: 'answer',
    ask: w`Who works on after ${technician}?`,
    options: others.filter((name) => name !== technician).map((value) => ({ words: value, value })),
    typed: { label: w`Name`, most: 80, fault: (text) => (text === '' ? w`A name, please.` : null) },
  };
}

const damageWanted = (): Wanted => ({
  want: 'answer',
  ask: w`What is broken or worn on this old plug? Choose it again to unmark it.`,
  options: damageSchema.options.map((one) => ({
    words: DAMAGE[one].words,
    value: one,
  })),
  typed: null,
});

/** The parts that the order allows, or what stands on the box. */
function partWanted({ order }: JobState): Wanted {
  const parts = [order.plug.part, ...(order.plug.alsoParts ?? [])];
  return {
    want: 'answer',
    ask: w`Which part number is on the box?`,
    options: inWords(parts),
    typed: { label: w`Part`, most: 60, fault: (text) => (text === '' ? w`The part number, please.` : null) },
  };
}

export const NO_TIMES: PullTimes = new Map();

/** What a form asks next, or what it comes to. */
export function wantedBy(form: Form, job: JobState, times: PullTimes = NO_TIMES): Wanted {
  const [first] = form.answers;
  switch (form.kind) {
    case 'exceptions':
      return exceptions(form, job);
    case 'give-pull':
      return givePull(form, job, times);
    case 'left-out':
      return leftOutForm(form, job);
    case 'start-again':
      return startAgain(form, job);
    case 'accept':
      return accept(form, job);
    case 'fit-by-angle':
      return fitByAngle(form, job);
    case 'at-work':
      return first === undefined ? atWork(job) : asCommand({ do: 'at-work', person: first });
    case 'hand-over':
      return first === undefined
        ? nameLine(w`Who goes on with this job after ${job.technician}?`)
        : asCommand({ do: 'hand-over', to: first });
    case 'scrap':
      return scrap(form, job);
    case 'replace':
      return replace(form, job);
    case 'keep-gap':
      return keepGap(form, job);
    case 'take-back':
      return takeBack(form, job);
    case 'damage':
      return first === undefined ? damageWanted() : { want: 'draft' };
    case 'not-done':
      return first === undefined ? why('not-done', w`Why is this not done?`) : { want: 'draft' };
    case 'old-plug-note':
      return first === undefined
        ? line(w`A note about this plug. Enter alone: none.`, { label: w`Note`, most: LONGEST })
        : { want: 'draft' };
    case 'part':
      return first === undefined ? partWanted(job) : { want: 'draft' };
    case 'lot':
      return first === undefined
        ? line(w`Which lot or date code is on the box? Enter alone: none.`, { label: w`Lot`, most: 40 })
        : { want: 'draft' };
  }
}
