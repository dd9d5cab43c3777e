/**
 * A new job in a dialogue: a line an answer, each looked at when it is given, each proposed where the log or the shop's
 * library knows it. What comes out is a work order like one from a file; the log learns of it only when Enter opens it.
 */

import { z } from 'zod';
import type { LibraryEntry } from '../../job/library.ts';
import { type Opened, type Opening, type Override, openJob } from '../../job/open.ts';
import type { WorkOrder } from '../../job/order.ts';
import {
  type Adapter,
  adapterSchema,
  type FlexJoint,
  flexJointRefused,
  flexJointSchema,
} from '../../plug/geometry.ts';
import type { SingleFigure } from '../../plug/specification.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { err, ok, orThrow, type Result } from '../../result.ts';
import { glyphsFor } from '../../ui/glyphs.ts';
import { fill } from '../../ui/printable.ts';
import { w } from '../../words/catalogue.ts';
import type { LoadedStation } from '../station/station-file.ts';
import type { Dialogue } from '../terminal/dialogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { askMaybe, askUntil, isNumber, noNumber, parse } from '../terminal/questions.ts';
import { withWayBack } from '../terminal/way-back.ts';
import type { StationHistory } from './earlier-orders.ts';
import { type Answers, entryOf, NOTHING, orderOf } from './new-order-answers.ts';
import { engineDrawing } from './new-order-engine.ts';
import { askFigures, askKeep, type Chosen, figuresWords, typeFigures } from './new-order-figures.ts';
import {
  askComplaint,
  askDescription,
  askFleet,
  askNumber,
  askOdometer,
  askPlate,
  askTechnician,
  askVin,
} from './new-order-vehicle.ts';
import { betweenWords, toolRows, windowRows } from './order-summary.ts';
import type { Library } from './specification-files.ts';
import { TAPE } from './window-input.ts';

/** What a new order is made from, beside the answers. */
export interface OrderContext {
  readonly history: StationHistory;
  readonly library: Library;
  readonly file: LoadedStation;
  /** ISO date of the job. */
  readonly on: string;
  readonly overrides: readonly Override[];
}

/** A job to open; or the number of an open one to go on with; or neither, because somebody thought better of it. */
export type Asked =
  | {
      readonly do: 'open';
      readonly order: WorkOrder;
      readonly overrides: readonly Override[];
      readonly keep: LibraryEntry | null;
      /** A rule for single figures that was asked for. */
      readonly singleFigure: SingleFigure | null;
    }
  | { readonly do: 'resume'; readonly job: string }
  | { readonly do: 'nothing' };

interface Step {
  readonly label: () => string;
  readonly ask: (dialogue: Dialogue, answers: Answers, context: OrderContext) => Promise<Answers>;
  readonly show: (answers: Answers) => string;
}

const shown = (text: string | null) => (text === null ? '-' : safeLine(text));

const STEPS: readonly Step[] = [
  {
    label: () => w`job`,
    ask: async (dialogue, answers, { history }) => ({
      ...answers,
      job: await askNumber(dialogue, answers.job, history),
    }),
    show: ({ job }) => job,
  },
  {
    label: () => w`technician`,
    ask: async (dialogue, answers, { history }) => ({
      ...answers,
      technician: await askTechnician(dialogue, answers.technician, history.people),
    }),
    show: ({ technician }) => shown(technician),
  },
  {
    label: () => w`plate`,
    ask: (d, a, { history }) => askPlate(d, a, history),
    show: ({ plate }) => shown(plate),
  },
  { label: () => w`VIN`, ask: (d, a, { history }) => askVin(d, a, history), show: ({ vin }) => shown(vin) },
  {
    label: () => w`fleet number`,
    ask: (d, a, { history }) => askFleet(d, a, history),
    show: ({ fleet }) => shown(fleet),
  },
  { label: () => w`vehicle`, ask: askDescription, show: ({ description }) => shown(description) },
  {
    label: () => w`odometer`,
    ask: askOdometer,
    show: ({ odometerKm }) => (odometerKm === null ? '-' : `${odometerKm} km`),
  },
  { label: () => w`complaint`, ask: askComplaint, show: ({ complaint }) => shown(complaint) },
  {
    label: () => w`figures`,
    ask: async (dialogue, answers, context) => {
      const chosen = await askFigures(dialogue, answers.figures, context.library);
      if (chosen !== null) {
        say(dialogue, engineDrawing(chosen.engine.banks, glyphsFor(!speaksUtf8())));
        // Typed figures that are taken again by Enter keep the name they were given.
        return { ...answers, figures: chosen, keepAs: chosen === answers.figures ? answers.keepAs : null };
      }
      const typed = await typeFigures(
        dialogue,
        (figures) => orThrow(orderOf({ ...answers, figures: { ...figures, from: '' } })),
        context.on,
        context.file.singleFigure,
      );
      return { ...answers, figures: typed, keepAs: await askKeep(dialogue, context.library) };
    },
    show: ({ figures }) =>
      figures === null ? '-' : safeLine(`${sourceOf(figures)}: ${figuresWords(figures)}`),
  },
  {
    label: () => w`adapter`,
    ask: askBetween,
    show: ({ adapter, flexJoint }) => betweenWords(adapter, flexJoint),
  },
];

/** Asks for everything once, then shows the whole and lets any line be said again until Enter opens the job. */
export const newOrder = (dialogue: Dialogue, context: OrderContext): Promise<Asked> =>
  withWayBack(dialogue, (asked) => askOrder(asked, context));

async function askOrder(dialogue: Dialogue, context: OrderContext): Promise<Asked> {
  const { history } = context;
  dialogue.say(
    w`A new job. Enter takes the value in brackets, - leaves it empty, < goes back to the question before. Ctrl-C cancels; nothing is written.`,
  );
  for (const line of history.notices) dialogue.say(`! ${line}`);
  if (history.open.length > 0)
    dialogue.say(
      w`Open: ${history.open.slice(0, 5).join(', ')}. Type the number of an open job to resume it.`,
    );
  let answers: Answers = { ...NOTHING, job: history.nextJob, technician: history.people[0] ?? null };
  for (const step of STEPS) {
    answers = await step.ask(dialogue, answers, context);
    if (history.open.includes(answers.job)) return { do: 'resume', job: answers.job };
  }
  let { overrides } = context;
  for (;;) {
    const order = orderOf(answers);
    const checked = order.ok ? await checkedOrder(dialogue, order.value, { ...context, overrides }) : order;
    showAnswers(dialogue, answers, context);
    if (checked.ok) {
      ({ overrides } = checked.value);
      const { order: whole, opened } = checked.value;
      say(dialogue, [
        '',
        ...windowRows(whole, context.file.instruments, opened, context.file.decision, !speaksUtf8()),
      ]);
    } else say(dialogue, ['', w`  NOT POSSIBLE    ${problemWords(checked.error)}`]);
    if (!(checked.ok || dialogue.patient)) throw new ProblemError(checked.error);
    const next = await askNext(dialogue, checked.ok);
    if (next === 'leave') return { do: 'nothing' };
    if (next === 'open' && checked.ok)
      return {
        do: 'open',
        order: checked.value.order,
        overrides,
        keep: entryOf(answers, context.on),
        singleFigure: ruleAsked(answers),
      };
    const again = STEPS[Number(next) - 1];
    if (again !== undefined) answers = await again.ask(dialogue, answers, context);
    if (history.open.includes(answers.job)) return { do: 'resume', job: answers.job };
  }
}

const sourceOf = ({ from }: Chosen): string => (from === 'typed' ? w`typed` : from);

const ruleAsked = ({ figures }: Answers): SingleFigure | null =>
  figures?.from === 'typed' ? (figures.specification.singleFigure ?? null) : null;

/** The lines of the order, numbered, and the instruments. */
function showAnswers(dialogue: Dialogue, answers: Answers, { file, on }: OrderContext): void {
  const lines = STEPS.map(
    ({ label, show }, i) => `${String(i + 1).padStart(3)} ${fill(label(), 14, '')}${show(answers)}`,
  );
  const tools = toolRows(file.instruments, on, !speaksUtf8()).map(
    ([label, text]) => `    ${label.padEnd(14)}${safeLine(text)}`,
  );
  say(dialogue, ['', ...lines, ...tools]);
}

const say = (dialogue: Dialogue, lines: readonly string[]) => dialogue.say(lines.join('\n'));

function askNext(dialogue: Dialogue, possible: boolean): Promise<string> {
  const ways = possible
    ? w`Enter opens the job; a number changes that line; q leaves: `
    : w`A number changes that line; q leaves: `;
  return askUntil(dialogue, ways, (answer) => {
    if (answer === '' && possible) return ok('open');
    if (answer === 'q') return ok('leave');
    return STEPS[Number(answer) - 1] === undefined || answer === ''
      ? err(
          possible
            ? w`expected Enter, q, or a number from 1 to ${STEPS.length}`
            : w`expected q, or a number from 1 to ${STEPS.length}`,
        )
      : ok(answer);
  });
}

type Between = Pick<Answers, 'adapter' | 'flexJoint'>;

/** `300 40 90`, `universal 10`, or both; Enter for a wrench that stands straight on the plug. */
async function askBetween(dialogue: Dialogue, answers: Answers): Promise<Answers> {
  const { adapter, flexJoint } = answers;
  const crowfoot = adapter === null ? [] : [`${adapter.armMm} ${adapter.offsetMm} ${adapter.angleDeg}`];
  const usual = [...crowfoot, ...(flexJoint === null ? [] : [typedFlexJoint(flexJoint)])].join(' ');
  const text = w`Crowfoot: mm to hand, mm to plug, angle; or universal or wobble, degrees bent`;
  const between = await askMaybe<Between>(dialogue, text, usual === '' ? null : usual, (answer) => {
    if (answer === usual) return ok({ adapter, flexJoint });
    const [, figures = '', joint = ''] = /^(.*?)((?:universal|wobble)\b.*)?$/i.exec(answer) ?? [];
    const lengths = figures.replace(/[\s;]+$/, '');
    const read = lengths === '' ? ok(null) : readCrowfoot(lengths);
    if (!read.ok) return read;
    const bent = joint === '' ? ok(null) : readFlexJoint(joint);
    return bent.ok ? ok({ adapter: read.value, flexJoint: bent.value }) : bent;
  });
  return { ...answers, adapter: between?.adapter ?? null, flexJoint: between?.flexJoint ?? null };
}

function readCrowfoot(text: string): Result<Adapter, string> {
  const typed = text.split(/[\s;]+/);
  if (!typed.every(isNumber)) return err(noNumber());
  const [armMm, offsetMm, angleDeg = 0, ...more] = typed.map((one) => Number(one.replace(',', '.')));
  if (more.length > 0)
    return err(w`expected for example 300 40 90: drive to hand and drive to plug in mm, and the angle`);
  return parse(adapterSchema, { armMm, offsetMm, angleDeg, within: TAPE });
}

const KIND_OF: Readonly<Record<string, FlexJoint['kind']>> = {
  universal: 'universal-joint',
  wobble: 'wobble-extension',
};

/** `universal 10`, or with what somebody measured: `wobble 10 4 % tried on the bench`. */
function readFlexJoint(text: string): Result<FlexJoint, string> {
  const [, kind = '', bent = '', percent, basis] =
    /^(\w+)\s+(\d+(?:\.\d+)?)(?:\s+(\d+(?:\.\d+)?)\s*%?\s+(.+))?$/.exec(text) ?? [];
  if (kind === '')
    return err(
      w`expected for example universal 10, or with what was measured: wobble 10 4 % tried on the bench`,
    );
  const read = parse(flexJointSchema, {
    kind: KIND_OF[kind.toLowerCase()],
    bentDeg: Number(bent),
    ...(basis === undefined ? {} : { stated: { percent: Number(percent), basis } }),
  });
  const refused = read.ok ? flexJointRefused(read.value) : null;
  return refused === null ? read : err(`${refused.message}. ${refused.next}`);
}

/** As it is typed. */
const typedFlexJoint = ({ kind, bentDeg, stated }: FlexJoint): string =>
  [kind.split('-')[0], bentDeg, ...(stated === undefined ? [] : [`${stated.percent} %`, stated.basis])].join(
    ' ',
  );

interface Checked {
  readonly order: WorkOrder;
  readonly opened: Opened;
  readonly overrides: readonly Override[];
}

/** The job as it would be opened; where an instrument is refused, somebody is asked to answer for it. */
async function checkedOrder(
  dialogue: Dialogue,
  order: WorkOrder,
  { file, on, overrides }: Pick<OrderContext, 'file' | 'on' | 'overrides'>,
): Promise<Result<Checked>> {
  const opening: Opening = { on, decision: file.decision, overrides };
  const opened = openJob(order, file.instruments, opening);
  if (opened.ok) return ok({ order, opened: opened.value, overrides });
  const { answerableFor: tool } = opened.error;
  if (tool === undefined || overrides.some((one) => one.tool === tool)) return opened;
  dialogue.say(w`  Refused: ${problemWords({ ...opened.error, next: w`A supervisor can allow it.` })}`);
  const by = await askMaybe(dialogue, w`Supervisor who answers for ${tool}`, null, (text) =>
    wordsUpTo(text, 80),
  );
  if (by === null) return opened;
  const reason = await askUntil(dialogue, w`Reason to use it: `, (text) => wordsUpTo(text, 200));
  return checkedOrder(dialogue, order, { file, on, overrides: [...overrides, { tool, by, reason }] });
}

const wordsUpTo = (text: string, most: number): Result<string, string> =>
  parse(z.string().min(1).max(most), text);

const problemWords = ({ where, message, next }: Problem) =>
  safeLine(`${where === undefined ? '' : `${where}: `}${message}. ${next}`);
