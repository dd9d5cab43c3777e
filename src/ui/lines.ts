/** One plain line an event: for pipes, screen readers and logs, where no screen can be drawn. */
import type { JobEvent, JobEventOf } from '../job/event.ts';
import type { JobState, TorqueAttempt } from '../job/state.ts';
import { type Glyphs, glyphsFor } from './glyphs.ts';
import { printable } from './printable.ts';
import {
  ANSWERS,
  answerKeys,
  figure,
  fixed,
  judgementParts,
  quantityWord,
  SIMULATED,
  windowFigures,
} from './words.ts';

/** The pieces of a line, each still as it came from outside. */
type Pieces = readonly string[];

const given = (texts: readonly (string | undefined)[]): Pieces => texts.filter((text) => text !== undefined);

const seconds = (fromUs: number, toUs: number): string => fixed((toUs - fromUs) / 1e6, 2);

function opened({ order, torqueWindow, gapWindow }: JobEventOf<'job-opened'>, glyphs: Glyphs): Pieces {
  const { job, vehicle, technician } = order;
  const torque = `torque ${windowFigures(torqueWindow)} ${glyphs.newtonMetre}`;
  const gap = `gap ${windowFigures(gapWindow)} mm`;
  return given([`job ${job} opened`, vehicle.description, vehicle.plate, technician, torque, gap]);
}

function linked({ tool, description }: JobEventOf<'tool-linked'>): Pieces {
  const { maker, model, serial, batteryPercent } = description;
  const charge = batteryPercent === undefined ? undefined : `battery ${batteryPercent} %`;
  return given([tool, 'linked', maker, model, serial, charge]);
}

const attemptOf = (state: JobState, pull: number): TorqueAttempt | undefined =>
  [...state.cylinders.flatMap(({ pulls }) => pulls), ...state.strays].find((one) => one.pull.pull === pull);

function placed(event: JobEventOf<'pull-placed'>, after: JobState, glyphs: Glyphs): Pieces {
  const where = event.cylinder === null ? 'no cylinder' : `cylinder ${event.cylinder}`;
  const peakNm = attemptOf(after, event.pull)?.pull.peakNm;
  const peak = peakNm === undefined ? undefined : `${figure(peakNm, 'N.m')} ${glyphs.newtonMetre}`;
  const verdict =
    event.judgement === null
      ? given(['not judged', peak, `${event.kind}: ${event.because}`])
      : judgementParts(event.judgement, after.torqueWindow, glyphs);
  const question = after.questions.find(({ pull }) => pull === event.pull);
  const asks = question === undefined ? [] : ['ask', question.text, answerKeys(question)];
  return [where, 'torque', ...verdict, ...asks];
}

function answered({ pull, answer }: JobEventOf<'question-answered'>, before: JobState | null): Pieces {
  const cylinder = before?.questions.find((question) => question.pull === pull)?.cylinder;
  const where = cylinder === undefined ? undefined : `cylinder ${cylinder}`;
  return given([where, `pull ${pull}`, 'answered', ANSWERS[answer].long]);
}

function said(event: JobEvent, before: JobState | null, after: JobState, glyphs: Glyphs): Pieces | null {
  switch (event.type) {
    case 'readings':
    case 'pull-found': // the line of its placing follows and says more
      return null;
    case 'job-opened':
      return opened(event, glyphs);
    case 'session-started':
      return given([
        `session ${event.session} started`,
        event.program,
        event.platform,
        event.simulated ? SIMULATED : undefined,
      ]);
    case 'tool-linked':
      return linked(event);
    case 'tool-lost':
      return [event.tool, 'lost', event.reason];
    case 'readings-missed':
      return [event.tool, `readings missed for ${seconds(event.fromUs, event.toUs)} s`, event.reason];
    case 'value-not-known':
      return [event.tool, `reading ${event.reading} has no value`];
    case 'raw-value':
      return [event.tool, 'kept raw, not understood', event.source, event.hex];
    case 'gap-measured':
      return [
        `cylinder ${event.cylinder}`,
        'gap',
        ...judgementParts(event.judgement, after.gapWindow, glyphs),
      ];
    case 'pull-placed':
      return placed(event, after, glyphs);
    case 'cylinder-chosen':
      return [`cylinder ${event.cylinder}`, `chosen for the next ${quantityWord(event.quantity)}`];
    case 'question-answered':
      return answered(event, before);
    case 'job-closed':
      return event.complete ? ['job closed', 'complete'] : ['job closed', 'not complete', ...event.open];
  }
}

/** A piece of a line may be long in a log, but not without end. */
const LONGEST_PIECE = 240;

/**
 * The line of an event, or null for one that a person need not hear of. `before` is the state without the event (null
 * at the beginning), `after` the state with it, `atText` the time of day as it is to be printed.
 */
export function lineFor(
  event: JobEvent,
  before: JobState | null,
  after: JobState,
  atText: string,
  ascii = false,
): string | null {
  const pieces = said(event, before, after, glyphsFor(ascii));
  return pieces && [atText, ...pieces.map((text) => printable(text, LONGEST_PIECE, ascii))].join('  ');
}
