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
import { noteLines } from '../../report/words/index.ts';
import { orThrow } from '../../result.ts';
import { type Glyphs, glyphsFor } from '../../ui/glyphs.ts';
import { figure, unitWord } from '../../ui/words.ts';
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
    [tool.serial ?? 'no serial number', calibrationWords(tool, on, glyphs)].join('; '),
  ]);
}

/** Where the calibration of an instrument stands on a day, with symbol and words. */
export function calibrationWords(tool: Instrument, on: string, glyphs: Glyphs): string {
  const { certificate, basis, permissibleDeviation, outOfTolerance } = tool;
  if (outOfTolerance !== undefined) {
    const held = certificate === undefined ? '' : `; certificate ${certificate.number} holds no more`;
    return `${glyphs.bad} OUT OF TOLERANCE (${outOfTolerance.impact}, ${outOfTolerance.on}): ${offBy(outOfTolerance, unitOf(tool))}${held}`;
  }
  if (certificate === undefined) {
    const within =
      permissibleDeviation?.kind === 'relative'
        ? `within ${permissibleDeviation.percent} % of the reading`
        : `within ${permissibleDeviation?.amount ?? '?'} ${tool.quantity === 'torque' ? 'N·m' : 'mm'}`;
    return `${glyphs.todo} no certificate; ${within} by ${basis}`;
  }
  const due = dueDate(tool);
  const named = `certificate ${certificate.number} of ${certificate.date}`;
  if (due === null) return `${glyphs.todo} ${named}, no due date`;
  const days = Math.round((Date.parse(due) - Date.parse(on)) / 86_400_000);
  if (days < 0) return `${glyphs.bad} OUT OF DATE: ${named} expired on ${due}, ${dayCount(-days)} ago`;
  return `${glyphs.done} in date: ${named}, due ${due}, ${dayCount(days)} left`;
}

const dayCount = (days: number) => (days === 1 ? '1 day' : `${days} days`);

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
  const gap = gapWindow === null ? 'not measured in this job' : gapText(gapWindow, glyphs);
  return [
    ...torque,
    `  ${'gap'.padEnd(LABEL)}${gap}`,
    ...noteLines(order, basis.notes).map((note) => `  ${'note'.padEnd(LABEL)}${safeLine(note)}`),
  ];
}

function gapText(window: Window, glyphs: Glyphs): string {
  const of = (value: number) => figure(value, window.unit);
  return (
    `${of(window.lowerLimit)} to ${of(window.upperLimit)} ${unitWord(window.unit, glyphs)}; ` +
    `accepted ${of(window.acceptLower)} to ${of(window.acceptUpper)}`
  );
}

/** What is between wrench and plug. */
export function betweenWords(adapter: Adapter | null, flexJoint: FlexJoint | null): string {
  const crowfoot =
    adapter === null
      ? []
      : [`${adapter.offsetMm} mm at ${formatAngle(adapter.angleDeg)}, hand at ${adapter.armMm} mm`];
  const joint = flexJoint === null ? [] : [flexJointWords(flexJoint)];
  return [...crowfoot, ...joint].join('; ') || 'none';
}
