/** What went otherwise than planned, each as one clear question after the other (src/ui/form.ts). */
import type { Command } from '../job/command.ts';
import { isFitted } from '../job/early.ts';
import { scrapReasonSchema } from '../job/event.ts';
import { leftOut } from '../job/situation.ts';
import { isOver, type JobState, type Question } from '../job/state.ts';
import { damageSchema } from '../plug/condition.ts';
import { type SeatTurn, seatTurn } from '../plug/seat-turn.ts';
import { SCRAP_WORDS, SEAT_TURN_WORDS, saidWords } from '../report/words/index.ts';
import { called } from '../sequence/plan.ts';
import { DAMAGE } from './condition-words.ts';
import { type Form, type FormKind, newForm, type Option, type Typed, type Wanted } from './form.ts';
import { figure } from './words.ts';

const LONGEST = 200;

const lettered = (words: readonly string[]): Option[] =>
  words.map((value, i) => ({ key: String.fromCharCode(97 + i), words: value, value }));

const REASONS = {
  'give-pull': ['the wrench was on that plug', 'the wrong cylinder was chosen on the screen'],
  'left-out': ['its plug was only finger-tight', 'its plug was not fitted yet'],
  'start-again': ['thread or seat needs a look', 'the pull was not a clean one', 'the plug was damaged'],
  accept: ['thread and seat inspected, both sound', 'the service information allows it'],
  early: ['it was done before, and not confirmed here', 'the order makes no difference on this engine'],
  'take-back': ['the wrong key was pressed', 'measured or read again', 'it was another cylinder'],
  'fit-by-angle': ['no room for the wrench', 'no adapter that reaches it'],
  'not-done': ['does not apply to this engine', 'done before this job was opened', 'cannot be done here'],
} as const;

type WithReason = keyof typeof REASONS;

/** The last question of most forms: why, by a key or in own words. */
function why(kind: WithReason, ask: string): Wanted {
  const typed: Typed = {
    label: 'Reason',
    most: LONGEST,
    fault: (text) => (text === '' ? 'A few words, please.' : null),
  };
  return { want: 'answer', ask, options: lettered(REASONS[kind]), typed };
}

const line = (ask: string, typed: Typed): Wanted => ({ want: 'answer', ask, options: [], typed });

function cylinderLine(job: JobState, ask: string, start: number | null): Wanted {
  const numbers = job.cylinders.map(({ cylinder }) => cylinder);
  return line(ask, {
    label: 'Cylinder',
    most: 2,
    start: start === null ? '' : String(start),
    fault: (text) =>
      numbers.includes(Number(text))
        ? null
        : `This engine has no cylinder "${text}". It has ${numbers.join(', ')}.`,
  });
}

const nameLine = (ask: string): Wanted =>
  line(ask, { label: 'Name', most: 80, fault: (text) => (text === '' ? 'A name, please.' : null) });

const asCommand = (command: Command): Wanted => ({ want: 'command', command });

const questionAbout = (job: JobState, pull: number): Question | undefined =>
  job.questions.find((open) => open.pull === pull);

function givePull({ answers }: Form, job: JobState): Wanted {
  const [pull, cylinder, reason] = answers;
  if (pull === undefined) {
    const last = job.lastPull;
    const peak =
      last === null ? '' : ` The last one was pull ${last.pull}, ${figure(last.peakNm, 'N.m')} N·m.`;
    const start = job.questions[0]?.pull ?? job.pullCount;
    return line(`Which pull was on another plug?${peak}`, {
      label: 'Pull',
      most: 4,
      start: String(start),
      fault: (text) =>
        Number.isInteger(Number(text)) && Number(text) >= 1 && Number(text) <= job.pullCount
          ? null
          : `There is no pull "${text}". Pulls are numbered 1 to ${job.pullCount}.`,
    });
  }
  if (cylinder === undefined) return cylinderLine(job, `On which cylinder was pull ${pull}?`, null);
  if (reason === undefined) return why('give-pull', `Why does pull ${pull} belong to cylinder ${cylinder}?`);
  return asCommand({ do: 'give-pull', pull: Number(pull), cylinder: Number(cylinder), why: reason });
}

function leftOutForm({ about, answers }: Form, job: JobState): Wanted {
  const pull = Number(about);
  const [cylinder, on, reason] = answers;
  if (cylinder === undefined)
    return cylinderLine(job, 'Which cylinder was left out? Its plug is not tight.', null);
  if (on === undefined)
    return cylinderLine(
      job,
      `On which tight plug was pull ${pull}?`,
      questionAbout(job, pull)?.cylinder ?? null,
    );
  if (reason === undefined) return why('left-out', `How do you know that cylinder ${cylinder} was left out?`);
  return asCommand({ do: 'left-out', pull, cylinder: Number(cylinder), on: Number(on), why: reason });
}

const NEW_OR_NOT: readonly Option[] = [
  { key: 'a', words: 'the same plug goes in again', value: 'same' },
  { key: 'b', words: 'a new plug takes its place', value: 'new' },
];

function startAgain({ answers }: Form, job: JobState): Wanted {
  const [cylinder, plug, reason] = answers;
  if (cylinder === undefined)
    return cylinderLine(
      job,
      'Which plug do you take out and start again?',
      job.lastTight ?? job.torqueTarget,
    );
  if (plug === undefined)
    return {
      want: 'answer',
      ask: `Back the plug of ${called(job.order.engine, Number(cylinder))} out. What goes in?`,
      options: NEW_OR_NOT,
      typed: null,
    };
  if (reason === undefined) return why('start-again', `Why is cylinder ${cylinder} started again?`);
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
  const name = where === undefined ? `pull ${pull}` : called(job.order.engine, where);
  if (by === undefined)
    return nameLine(
      `${name.replace(/^c/, 'C')} stays as it is, ${early ? 'out of order' : 'over the window'}: who answers for it? It does not count as proven.`,
    );
  if (reason === undefined) return why(early ? 'early' : 'accept', `Why may ${name} stay as it is?`);
  return asCommand({ do: 'accept', pull, by, reason });
}

function fitByAngle({ answers }: Form, job: JobState): Wanted {
  const [cylinder, turn, reason] = answers;
  if (cylinder === undefined)
    return cylinderLine(
      job,
      'Which plug can no torque wrench reach? It will not count as proven by torque.',
      job.torqueTarget,
    );
  const { specification, plug } = job.order;
  const advised = seatTurn(plug);
  if (turn === undefined)
    return line(
      `How far did you turn cylinder ${cylinder} from finger-tight? ${turnAdvice(specification.angle, advised)}`,
      {
        label: 'Turn',
        most: 40,
        start: specification.angle ?? '',
        fault: (text) => (text === '' ? 'For example: 1/2 turn.' : null),
      },
    );
  if (reason === undefined)
    return why('fit-by-angle', `Why was cylinder ${cylinder} not pulled with the wrench?`);
  return asCommand({ do: 'fit-by-angle', cylinder: Number(cylinder), turn, why: reason });
}

/** The order's own turn goes first; else that of the seat, with who says so. */
const turnAdvice = (ofOrder: string | undefined, advised: SeatTurn): string =>
  ofOrder === undefined
    ? `${SEAT_TURN_WORDS[advised.seat]}: ${advised.turn} (${advised.cited}; the box goes first). ${LESS_ACCURATE}`
    : `The order says ${ofOrder}. ${LESS_ACCURATE}`;

const LESS_ACCURATE = 'Less accurate than a torque, and not proven.';

/** Nothing goes to the scrap by one key: the question says what follows. */
function scrap({ about, answers }: Form, job: JobState): Wanted {
  const cylinder = Number(about);
  const [reason] = scrapReasonSchema.options.filter((one) => one === answers[0]);
  if (reason !== undefined) return asCommand({ do: 'scrap-plug', cylinder, reason });
  const isOut = job.plugs[cylinder]?.step?.do === 'replace';
  const fitted = job.cylinders.some((c) => c.cylinder === cylinder && isFitted(c));
  const after = fitted ? 'It comes out, and gap and torque start again' : 'Its gap is measured anew';
  const reasons = [...scrapReasonSchema.options].sort(
    (a, b) => Number(isOut && b === 'gap') - Number(isOut && a === 'gap'),
  );
  return {
    want: 'answer',
    ask: `Discard the plug for ${called(job.order.engine, cylinder)}? A new one takes its place. ${after}. Why?`,
    options: reasons.map((one, i) => ({
      key: String.fromCharCode(97 + i),
      words: SCRAP_WORDS[one],
      value: one,
    })),
    typed: null,
  };
}

/** How many of the last things that were said are offered. */
const OFFERED = 8;

function takeBack({ answers }: Form, job: JobState): Wanted {
  const [said, reason] = answers;
  const numbers = job.said.flatMap(({ takenBack }, i) => (takenBack === true ? [] : [i + 1])).reverse();
  if (said === undefined)
    return {
      want: 'answer',
      ask: 'Take back what? It stays on the record and counts no more. The last one is first.',
      options: numbers.slice(0, OFFERED).map((number, i) => ({
        key: String.fromCharCode(97 + i),
        words: saidWords(job, number),
        value: String(number),
      })),
      typed: null,
    };
  if (reason === undefined)
    return why('take-back', `Why do you take this back: ${saidWords(job, Number(said))}?`);
  return asCommand({ do: 'take-back', said: Number(said), why: reason });
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
      key: 'a',
      words: 'a pull was on another cylinder',
      value: 'give-pull',
      about: job.pullCount > 0 ? '' : null,
    },
    { key: 'b', words: 'a cylinder was left out', value: 'left-out', about: passed ? question.pull : null },
    {
      key: 'c',
      words: 'take a plug out and start again',
      value: 'start-again',
      about: job.pullCount > 0 && question === undefined ? '' : null,
    },
    {
      key: 'd',
      words: 'leave it as it is: a named person answers for it',
      value: 'accept',
      about: canStay(question) ? question.pull : null,
    },
    {
      key: 'e',
      words: 'no torque wrench reaches a plug: fit it by angle',
      value: 'fit-by-angle',
      about: open ? '' : null,
    },
    { key: 'f', words: 'hand the job over to somebody else', value: 'hand-over', about: '' },
    {
      key: 'g',
      words: 'somebody else is at work now, the job stays with its technician',
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
  return { want: 'answer', ask: 'What did not go as planned?', options: ways, typed: null };
}

/** Those of whom the job knows by one key; anybody else by name. */
function atWork({ order, toolsOf, cylinders, technician }: JobState): Wanted {
  const worked = cylinders.flatMap(({ gaps, pulls }) => [...gaps, ...pulls].map((one) => one.technician));
  const others = [...new Set([order.technician, ...Object.values(toolsOf), ...worked])];
  return {
    want: 'answer',
    ask: `Who works on after ${technician}?`,
    options: lettered(others.filter((name) => name !== technician)),
    typed: { label: 'Name', most: 80, fault: (text) => (text === '' ? 'A name, please.' : null) },
  };
}

const damageWanted = (): Wanted => ({
  want: 'answer',
  ask: 'What is broken or worn on this old plug? Choose it again to unmark it.',
  options: damageSchema.options.map((one, i) => ({
    key: String.fromCharCode(97 + i),
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
    ask: 'Which part number is on the box?',
    options: lettered(parts),
    typed: { label: 'Part', most: 60, fault: (text) => (text === '' ? 'The part number, please.' : null) },
  };
}

/** What a form asks next, or what it comes to. */
export function wantedBy(form: Form, job: JobState): Wanted {
  const [first] = form.answers;
  switch (form.kind) {
    case 'exceptions':
      return exceptions(form, job);
    case 'give-pull':
      return givePull(form, job);
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
        ? nameLine(`Who goes on with this job after ${job.technician}?`)
        : asCommand({ do: 'hand-over', to: first });
    case 'scrap':
      return scrap(form, job);
    case 'take-back':
      return takeBack(form, job);
    case 'damage':
      return first === undefined ? damageWanted() : { want: 'draft' };
    case 'not-done':
      return first === undefined ? why('not-done', 'Why is this not done?') : { want: 'draft' };
    case 'old-plug-note':
      return first === undefined
        ? line('A note about this plug. Enter alone: none.', { label: 'Note', most: LONGEST })
        : { want: 'draft' };
    case 'part':
      return first === undefined ? partWanted(job) : { want: 'draft' };
    case 'lot':
      return first === undefined
        ? line('Which lot or date code is on the box? Enter alone: none.', { label: 'Lot', most: 40 })
        : { want: 'draft' };
  }
}
