/** One plain line an event: for pipes, screen readers and logs, where no screen can be drawn. */

import { isByAngle } from '../job/click.ts';
import { coachingFor } from '../job/coaching.ts';
import type { JobEvent, JobEventOf } from '../job/event.ts';
import { attemptOf } from '../job/situation.ts';
import { torqueWindowOf } from '../job/stage.ts';
import type { JobState } from '../job/state.ts';
import { statementOf } from '../job/statements.ts';
import { gapText, shownLimit, torqueText } from '../quantity/shown.ts';
import { scaled } from '../reading.ts';
import {
  CONTRADICTION_WORDS,
  deviceRefusalText,
  gapStepText,
  instrumentRefusalText,
  KIND_WORDS,
  linkEndText,
  MISS_WORDS,
  OUT_OF_TURN_NEXT,
  OUT_OF_TURN_WORDS,
  openItemText,
  placementText,
  questionText,
  reasonWords,
  SCRAP_WORDS,
  SOURCE_NOTE,
  statementWords,
  turnLimitsText,
  turnText,
  turnVerdictText,
  WIRE_WORDS,
} from '../report/words/index.ts';
import { fixed, w } from '../words/catalogue.ts';
import { adviceText } from './advice-words.ts';
import { checklistLine } from './checklist-lines.ts';
import { type Glyphs, glyphsFor } from './glyphs.ts';
import { printable } from './printable.ts';
import { ANSWERS, answerKeys, judgementParts, quantityWord, unitWord, windowFigures } from './words.ts';

/** The pieces of a line, each still as it came from outside. */
type Pieces = readonly string[];

const takenBackWords = (after: JobState, event: JobEventOf<'taken-back'>): string => {
  const one = statementOf(after, event);
  return one === undefined ? w`number ${event.said}` : statementWords(one);
};

const given = (texts: readonly (string | undefined)[]): Pieces => texts.filter((text) => text !== undefined);

const seconds = (fromUs: number, toUs: number): string => fixed((toUs - fromUs) / 1e6, 2);

/** Whose tool it is, where that changes who is at work. */
const changedHands = (before: JobState | null, { technician }: JobState): string[] =>
  before === null || before.technician === technician ? [] : [w`at work: ${technician}`];

function opened({ order, torqueWindow, gapWindow, basis }: JobEventOf<'job-opened'>, glyphs: Glyphs): Pieces {
  const { job, vehicle, technician } = order;
  const torque = [
    ...(basis.turn === undefined ? [] : [w`turn ${turnLimitsText(basis.turn)} from contact`]),
    isByAngle(basis)
      ? w`torque ${windowFigures(torqueWindow)} ${unitWord('N.m', glyphs)} is usual`
      : w`torque ${windowFigures(torqueWindow)} ${unitWord('N.m', glyphs)}`,
  ];
  const gap =
    gapWindow === null ? w`gap not measured` : w`gap ${windowFigures(gapWindow)} ${unitWord('mm', glyphs)}`;
  return given([w`job ${job} opened`, vehicle.description, vehicle.plate, technician, ...torque, gap]);
}

function linked({ tool, source, description }: JobEventOf<'tool-linked'>): Pieces {
  const { maker, model, serial, batteryPercent } = description;
  const charge = batteryPercent === undefined ? undefined : w`battery ${batteryPercent} %`;
  const sends = description.angle === undefined ? undefined : w`sends its angle`;
  return given([tool, w`linked`, SOURCE_NOTE[source] ?? undefined, maker, model, serial, charge, sends]);
}

function placed(
  event: JobEventOf<'pull-placed'>,
  before: JobState | null,
  after: JobState,
  glyphs: Glyphs,
): Pieces {
  const where = event.cylinder === null ? w`no cylinder` : w`cylinder ${event.cylinder}`;
  const attempt = attemptOf(after, event.pull);
  const peakNm = attempt?.pull.peakNm;
  const note = attempt === undefined ? null : SOURCE_NOTE[attempt.pull.source];
  const peak = peakNm === undefined ? undefined : torqueText(peakNm);
  const verdict =
    event.judgement === null
      ? given([w`not judged`, peak, attempt && `${KIND_WORDS[event.kind]}: ${placementText(attempt)}`])
      : [
          ...judgementParts(
            event.judgement,
            torqueWindowOf(before ?? after, event.cylinder),
            glyphs,
            isByAngle(after.basis) ? 'usual' : 'window',
          ),
          ...(after.basis.decision.grades ? [event.judgement.grade] : []),
          ...given([note ?? undefined]),
        ];
  const turn = given([
    turnVerdictText(event.turn) ?? undefined,
    (attempt && event.cylinder !== null ? turnText(attempt.pull) : null) ?? undefined,
  ]);
  const question = after.questions.find(({ pull }) => pull === event.pull);
  const asks = question === undefined ? [] : [w`ask`, questionText(after, question), answerKeys(question)];
  const [advice] = event.judgement === null ? [] : coachingFor(after, event.pull);
  return [
    where,
    quantityWord('torque'),
    ...verdict,
    ...turn,
    ...(advice === undefined ? [] : [adviceText(advice)]),
    ...asks,
  ];
}

/** What a gap asks for, where it is more than going on. */
function asked(state: JobState, cylinder: number): Pieces {
  const step = state.plugs[cylinder]?.step ?? null;
  const text = step === null ? null : gapStepText(step);
  if (text === null) return [];
  return [step?.do === 'replace' ? w`replace the plug: ${text}` : text];
}

function answered({ pull, answer }: JobEventOf<'question-answered'>, before: JobState | null): Pieces {
  const cylinder = before?.questions.find((question) => question.pull === pull)?.cylinder;
  const where = cylinder === undefined ? undefined : w`cylinder ${cylinder}`;
  return given([where, w`pull ${pull}`, w`answered`, ANSWERS[answer].long]);
}

function piecesOf(event: JobEvent, before: JobState | null, after: JobState, glyphs: Glyphs): Pieces | null {
  switch (event.type) {
    case 'readings':
    case 'tool-silent':
    case 'pull-detected': // the line of its placing follows and says more
      return null;
    case 'job-opened':
      return opened(event, glyphs);
    case 'session-started':
      return [w`session ${event.session} started`, event.program, event.platform];
    case 'tool-linked':
      return linked(event);
    case 'tool-lost':
      return [event.tool, w`lost`, linkEndText(event)];
    case 'readings-missed':
      return [
        event.tool,
        event.readings === undefined
          ? w`readings missed for ${seconds(event.fromUs, event.toUs)} s`
          : w`${event.readings} readings missed for ${seconds(event.fromUs, event.toUs)} s`,
        MISS_WORDS[event.reason],
      ];
    case 'value-stored':
      return [
        event.tool,
        w`stored reading from its memory, not given to a cylinder`,
        storedFigure(event, after),
      ];
    case 'device-refused':
      return [event.tool, w`refused`, deviceRefusalText(event)];
    case 'profile-contradicted':
      return [
        event.tool,
        w`STOPPED`,
        CONTRADICTION_WORDS[event.because],
        w`nothing that it reads counts from here on`,
      ];
    case 'value-not-known':
      return [event.tool, w`reading ${event.reading} has no value`];
    case 'raw-value':
      return [event.tool, w`kept raw, not understood`, event.source, event.hex];
    case 'gap-measured':
      return [
        w`cylinder ${event.cylinder}`,
        quantityWord('length'),
        ...(after.gapWindow === null ? [] : judgementParts(event.judgement, after.gapWindow, glyphs)),
        ...given([SOURCE_NOTE[event.source] ?? undefined]),
        ...asked(after, event.cylinder),
      ];
    case 'instrument-overridden':
      return [
        event.tool,
        w`used although ${instrumentRefusalText(event.refusal)}`,
        w`answered for by ${event.by}: ${reasonWords(event.reason)}`,
      ];
    case 'uncertainty-declared':
      return [
        event.tool,
        w`states a wider error than the station file`,
        w`accepted from ${shownLimit(event.window.acceptLower, event.window.unit, 'lower')} to ${shownLimit(event.window.acceptUpper, event.window.unit, 'upper')}`,
      ];
    case 'gap-out-of-turn':
      return [
        w`gap ${gapText(event.gapMm)}`,
        w`out of turn, given to no plug: ${OUT_OF_TURN_WORDS[event.because]}`,
        OUT_OF_TURN_NEXT[event.because],
      ];
    case 'gap-kept':
      return [
        w`cylinder ${event.cylinder}`,
        w`gap kept though it came too early, NOT proven, answered for by ${event.by}: ${reasonWords(event.reason)}`,
      ];
    case 'gap-inspected':
      return [
        w`cylinder ${event.cylinder}`,
        quantityWord('length'),
        event.sound ? w`by eye: good` : w`by eye: not good`,
        ...asked(after, event.cylinder),
      ];
    case 'wire-tried':
      return [w`cylinder ${event.cylinder}`, quantityWord('length'), WIRE_WORDS[event.outcome]];
    case 'plug-scrapped':
      return [w`cylinder ${event.cylinder}`, w`plug scrapped`, SCRAP_WORDS[event.reason]];
    case 'pull-placed':
      return placed(event, before, after, glyphs);
    case 'pull-given':
      return given([
        w`pull ${event.pull}`,
        w`given to cylinder ${event.cylinder}`,
        reasonWords(event.why) || undefined,
      ]);
    case 'cylinder-left-out':
      return given([w`cylinder ${event.cylinder}`, w`was left out`, reasonWords(event.why) || undefined]);
    case 'cylinder-restarted':
      return given([
        w`cylinder ${event.cylinder}`,
        event.newPlug ? w`backed out, fit a new plug` : w`backed out, start again`,
        reasonWords(event.why) || undefined,
      ]);
    case 'cylinder-chosen':
      return [
        w`cylinder ${event.cylinder}`,
        event.quantity === 'old-plug'
          ? w`old plug to read next`
          : event.quantity === 'torque'
            ? w`chosen for the next torque`
            : w`chosen for the next gap`,
      ];
    case 'question-answered':
      return answered(event, before);
    case 'windows-confirmed':
    case 'trial-click-skipped':
    case 'steps-attested':
    case 'old-plugs-read':
    case 'old-gap-measured':
    case 'removal-felt':
    case 'new-plugs-checked':
    case 'fitted-by-angle':
    case 'pull-accepted':
      return checklistLine(event, after);
    case 'taken-back':
      return [w`taken back`, takenBackWords(after, event), reasonWords(event.why)];
    case 'technician-at-work':
      return given([w`at work`, before === null ? undefined : w`after ${before.technician}`, event.person]);
    case 'tool-in-use':
      return [w`${event.tool} in use`, ...changedHands(before, after)];
    case 'job-handed-over':
      return given([
        w`job handed over`,
        before === null ? undefined : w`from ${before.technician}`,
        w`to ${event.to}`,
      ]);
    case 'job-voided':
      return [w`job VOID`, w`by ${event.by}`, reasonWords(event.reason)];
    case 'job-closed':
      return event.complete
        ? [w`job closed`, w`complete`]
        : [w`job closed`, w`not complete`, ...event.open.map(openItemText)];
  }
}

/** In the unit of the tool, as it described itself when it joined; in its own steps where that is not known. */
function storedFigure({ tool, counts }: JobEventOf<'value-stored'>, { tools }: JobState): string {
  const description = tools[tool]?.description;
  if (description === undefined) return w`${counts} steps`;
  const { quantity, exponent } = description;
  return quantity === 'torque' ? torqueText(scaled(counts, exponent)) : gapText(scaled(counts, exponent + 3));
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
  const pieces = piecesOf(event, before, after, glyphsFor(ascii));
  return pieces && [atText, ...pieces.map((text) => printable(text, LONGEST_PIECE, ascii))].join('  ');
}
