/** The windows that the figures of the order come to, and what they rest on: read and confirmed before the first plug. */
import { dueDate } from '../../instrument/fitness.ts';
import type { InstrumentInUse } from '../../instrument/instrument.ts';
import { isByAngle } from '../../job/click.ts';
import type { JobState } from '../../job/state.ts';
import { asWrenchReads } from '../../job/windows.ts';
import type { Window } from '../../metrology/judgement.ts';
import { gapCheckOf } from '../../plug/gap.ts';
import { inUnits, SI } from '../../quantity/shown.ts';
import { noteLines, promiseWords, turnLimitsText } from '../../report/words/index.ts';
import { phrases, w } from '../../words/catalogue.ts';
import { folded } from '../folded.ts';
import type { Glyphs } from '../glyphs.ts';
import type { Line } from '../line.ts';
import { fill, printable } from '../printable.ts';
import {
  capital,
  cautions,
  figure,
  quantityBrief,
  rangeFigures,
  toolWord,
  unitWord,
  windowFigures,
} from '../words.ts';
import type { Room } from './panel.ts';

export const windowsSentence = (): string =>
  w`Compare these windows with the service information. Enter: they are right.`;

const LABEL = 13;

/** A label and its text, folded under itself. */
function fact(
  label: string,
  text: string,
  columns: number,
  glyphs: Glyphs,
  { bold = false, most = 3 } = {},
): Line[] {
  const lines = folded(printable(text, 400, glyphs.ascii), columns - LABEL - 2, most, glyphs.cutMark);
  return lines.map((part, row) => [
    { text: ` ${fill(row === 0 ? label : '', LABEL, '')}`, dim: true },
    { text: part, bold },
  ]);
}

const THREADS = phrases({
  dry: 'dry',
  oiled: 'oiled',
  'anti-seize': 'with anti-seize',
  'factory-coated': 'as coated',
});

const seatText = ({ seat }: JobState['order']['plug']): string =>
  seat === 'conical' ? w`conical seat` : w`gasket seat`;

/** In the shop's unit, and in that of the record beside it where it is another one. */
function windowText(window: Window, glyphs: Glyphs): string {
  const shown = `${windowFigures(window)} ${unitWord(window.unit, glyphs)}`;
  const kept = inUnits(SI, () => `${windowFigures(window)} ${unitWord(window.unit, glyphs)}`);
  return shown === kept ? shown : `${shown} (${kept})`;
}

function guarded(window: Window, glyphs: Glyphs): string {
  if (!window.decidable) return w`this tool cannot prove any reading in this window: the guard bands meet`;
  const { unit, acceptLower, acceptUpper, expandedAtUpper } = window;
  return w`proven ${rangeFigures(acceptLower, acceptUpper, unit)} ${unitWord(unit, glyphs)} (guard band U ${figure(expandedAtUpper, unit)})`;
}

/** The turn from contact, where it is judged. */
function turn({ basis, order }: JobState): string[] {
  if (basis.turn === undefined) return [];
  const printed = basis.turn.alone === true ? order.specification.torque : (order.specification.turn ?? '');
  return [
    w`${turnLimitsText(basis.turn)} from contact ("${printed}")`,
    w`only a wrench that sends its angle can prove it`,
  ];
}

function torque(job: JobState, glyphs: Glyphs): string[] {
  const { torqueWindow, order } = job;
  const unit = unitWord('N.m', glyphs);
  if (isByAngle(job.basis))
    return [
      w`${windowFigures(torqueWindow)} ${unit} is usual for ${order.plug.thread}, ${seatText(order.plug)}`,
    ];
  const { torque: printed, singleFigure } = order.specification;
  const rule =
    singleFigure === undefined
      ? ''
      : w`, plus/minus ${singleFigure.percent} % by the SHOP'S rule, not the maker's`;
  const first = job.basis.firstTorqueWindow;
  const steps = first === null ? [] : [w`first step ${windowFigures(first)} ${unit}, loosen, then:`];
  const { lowerNm, upperNm } = asWrenchReads(job, torqueWindow);
  const reads =
    order.adapter === undefined
      ? []
      : [w`through the adapter the wrench reads ${rangeFigures(lowerNm, upperNm, 'N.m')} ${unit}`];
  return [
    ...steps,
    `${windowText(torqueWindow, glyphs)}, ${THREADS[order.specification.threads]} ("${printed}"${rule})`,
    guarded(torqueWindow, glyphs),
    ...others(job, glyphs),
    ...reads,
  ];
}

/** Each further wrench proves its own part of the window. */
const others = ({ instruments, windows, inUse }: JobState, glyphs: Glyphs): string[] =>
  instruments.flatMap(({ id, quantity }) => {
    const of = quantity === 'torque' && id !== inUse.torque ? windows[id] : undefined;
    return of === undefined
      ? []
      : [w`with ${printable(id, 32, glyphs.ascii)}: ${guarded(of.window, glyphs)}`];
  });

function gap({ gapWindow, order }: JobState, glyphs: Glyphs): string[] {
  const { specification } = order;
  if (gapWindow === null)
    return [gapCheckOf(specification) === 'visual-only' ? w`by eye, not measured` : w`do not touch`];
  return [`${windowText(gapWindow, glyphs)} ("${specification.gap ?? ''}")`, guarded(gapWindow, glyphs)];
}

/** What an instrument's figures rest on, and until when. */
export function calibration(instrument: InstrumentInUse, on: string): string {
  const { certificate } = instrument;
  if (certificate === undefined) return w`no certificate; ${promiseWords(instrument)}`;
  const due = dueDate(instrument);
  const until = due === null ? w`no due date` : due < on ? w`DUE since ${due}` : w`due ${due}`;
  return w`certificate ${certificate.number} of ${certificate.date}, ${until}`;
}

export function windowsLines(job: JobState, { columns, rows }: Room, glyphs: Glyphs): Line[] {
  const { order, instruments, basis } = job;
  const { source } = order.specification;
  const from = [source.title, source.edition, source.date].filter((text) => text !== undefined).join(', ');
  const many = (label: string, texts: readonly string[], bold = false) =>
    texts.flatMap((text, i) => fact(i === 0 ? label : '', text, columns, glyphs, { bold: bold && i === 0 }));
  const lines = [
    ...many(w`Turn`, turn(job), true),
    ...many(w`Torque`, torque(job, glyphs), !isByAngle(job.basis)),
    ...many(capital(quantityBrief('length')), gap(job, glyphs), true),
    ...instruments.flatMap((one) => {
      const serial = one.serial === undefined ? '' : `${one.serial}: `;
      return fact(toolWord(one.quantity), serial + calibration(one, basis.on), columns, glyphs, { most: 1 });
    }),
    ...fact(w`Plug`, `${order.plug.part}, ${order.plug.thread}, ${seatText(order.plug)}`, columns, glyphs),
    ...fact(w`From`, from, columns, glyphs),
    ...many(w`Complaint`, order.complaint === undefined ? [] : [order.complaint]),
    ...many(w`Note`, noteLines(order, basis.notes)),
  ];
  const warned = folded(cautions(), columns - 2, 2, glyphs.cutMark).map(
    (text): Line => [{ text: ` ${text}`, bold: true }],
  );
  return [...lines.slice(0, rows - warned.length - 1), [], ...warned];
}
