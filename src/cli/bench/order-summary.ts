/** What a job would be opened with, in lines: the order, the instruments with their calibration, the windows. */

import { dueDate } from '../../instrument/fitness.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import { offBy, unitOf } from '../../instrument/unfit.ts';
import type { Decision } from '../../job/basis.ts';
import type { Opened } from '../../job/open.ts';
import type { WorkOrder } from '../../job/order.ts';
import { flexJointWords, viewOfWindow } from '../../job/window-view.ts';
import type { Window } from '../../metrology/judgement.ts';
import type { Adapter, FlexJoint } from '../../plug/geometry.ts';
import { formatAngle } from '../../quantity/angle.ts';
import { shownValue } from '../../quantity/shown.ts';
import type { Quantity } from '../../reading.ts';
import { noteLines } from '../../report/words/index.ts';
import { orThrow } from '../../result.ts';
import { type Glyphs, glyphsFor } from '../../ui/glyphs.ts';
import { behindLabel } from '../../ui/printable.ts';
import { rangeFigures, unitWord, windowFigures } from '../../ui/words.ts';
import { plainFigure, plural, w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { LABEL } from '../terminal/wrapped.ts';
import { windowText } from './window.ts';

/** A label and what stands beside it; lines of one width make a table. */
export type Row = readonly [label: string, text: string];

/** The instruments, each with when it has to be calibrated again. */
export function toolRows(instruments: readonly Instrument[], on: string, ascii: boolean): readonly Row[] {
  const glyphs = glyphsFor(ascii);
  return instruments.map((tool) => [
    tool.id,
    [tool.serial ?? w`no serial number`, calibrationWords(tool, on, glyphs)].join('; '),
  ]);
}

/** Where the calibration of an instrument stands on a day, with symbol and words. */
export function calibrationWords(tool: Instrument, on: string, glyphs: Glyphs): string {
  const { certificate, basis, permissibleDeviation, outOfTolerance } = tool;
  if (outOfTolerance !== undefined) {
    const held = certificate === undefined ? '' : `; ${w`certificate ${certificate.number} holds no more`}`;
    return w`${glyphs.bad} OUT OF TOLERANCE (${outOfTolerance.impact}, ${outOfTolerance.on}): ${offBy(outOfTolerance, unitOf(tool))}${held}`;
  }
  if (certificate === undefined) {
    const within =
      permissibleDeviation?.kind === 'relative'
        ? w`within ${permissibleDeviation.percent} % of the reading`
        : w`within ${deviationText(permissibleDeviation?.amount, tool.quantity, glyphs)}`;
    return w`${glyphs.todo} no certificate; ${within} by ${basis}`;
  }
  const due = dueDate(tool);
  const named = w`certificate ${certificate.number} of ${certificate.date}`;
  if (due === null) return w`${glyphs.todo} ${named}, no due date`;
  const days = Math.round((Date.parse(due) - Date.parse(on)) / 86_400_000);
  if (days < 0) return w`${glyphs.bad} OUT OF DATE: ${named} expired on ${due}, ${dayCount(-days)} ago`;
  return w`${glyphs.done} in date: ${named}, due ${due}, ${dayCount(days)} left`;
}

const dayCount = (days: number) => plural(days, { one: '# day', other: '# days' });

function deviationText(amount: number | undefined, quantity: Quantity, glyphs: Glyphs): string {
  const unit = quantity === 'torque' ? 'N.m' : 'mm';
  const figure = amount === undefined ? '?' : roughly(shownValue(amount, unit));
  return `${figure} ${unitWord(unit, glyphs)}`;
}

/** As it was stated, or to three digits in another unit. */
const roughly = (value: number): string => plainFigure(Number(value.toPrecision(3)));

/** The windows that the job would be judged by: the torque as `plugmark window` has it, then the gap, then the notes. */
export function windowRows(
  order: WorkOrder,
  instruments: readonly Instrument[],
  opened: Opened,
  decision: Decision,
  ascii: boolean,
): readonly string[] {
  const glyphs = glyphsFor(ascii);
  const [{ basis, gapWindow }] = opened;
  const wrench = instruments.find(({ quantity }) => quantity === 'torque');
  if (wrench === undefined) return [];
  const whole = windowText(orThrow(viewOfWindow({ order, wrench, decision, on: basis.on })), null, ascii);
  const torque = whole.slice(0, whole.indexOf(''));
  const gap = gapWindow === null ? w`not measured in this job` : gapText(gapWindow, glyphs);
  return [
    ...torque,
    `  ${behindLabel(w`gap`, LABEL, gap)}`,
    ...noteLines(order, basis.notes).map((note) => `  ${behindLabel(w`note`, LABEL, safeLine(note))}`),
  ];
}

function gapText(window: Window, glyphs: Glyphs): string {
  const accepted = rangeFigures(window.acceptLower, window.acceptUpper, window.unit);
  return w`${windowFigures(window)} ${unitWord(window.unit, glyphs)}; accepted ${accepted}`;
}

/** What is between wrench and plug. */
export function betweenWords(adapter: Adapter | null, flexJoint: FlexJoint | null): string {
  const crowfoot =
    adapter === null
      ? []
      : [w`${adapter.offsetMm} mm at ${formatAngle(adapter.angleDeg)}, hand at ${adapter.armMm} mm`];
  const joint = flexJoint === null ? [] : [flexJointWords(flexJoint)];
  return [...crowfoot, ...joint].join('; ') || w`none`;
}
