/** What a pull gives reason to tell the technician, with what the job knows of its plug. */
import { tighteningOf } from '../plug/tightening.ts';
import { type Advice, adviceOn, type Coached } from '../pull/coaching.ts';
import { endsAtClick } from './click.ts';
import { attemptOf } from './situation.ts';
import { torqueWindowBefore } from './stage.ts';
import type { CylinderState, JobState, TorqueAttempt } from './state.ts';
import { asWrenchReads } from './windows.ts';

/**
 * Everything that pull number `pull` gives reason to say, gravest first; empty for a good one, for one that turned no plug
 * and for one that loosened it. Advice proves nothing and spoils nothing: verdicts rest on torque alone.
 */
export function coachingFor(state: JobState, pull: number): readonly Advice[] {
  const attempt = attemptOf(state, pull);
  const c = state.cylinders.find(({ cylinder }) => cylinder === attempt?.cylinder);
  if (attempt === undefined || c === undefined || attempt.kind === 'loosening') return [];
  const { lowerNm } = asWrenchReads(state, torqueWindowBefore(state, c, pull), attempt.pull.tool);
  const seat = attempt.kind === 'tightening' ? seatOf(state, c, pull, lowerNm) : UNKNOWN;
  const fallsMs = fallsOf(state, attempt.pull.tool);
  return adviceOn(attempt.pull, { lowerNm, clicks: endsAtClick(state, attempt.pull.tool), fallsMs, ...seat });
}

/** Of the pulls that ended what they were for; strokes on the way are let off anywhere. */
const fallsOf = ({ cylinders }: JobState, tool: string): readonly number[] =>
  cylinders
    .flatMap(({ pulls }) => pulls)
    .filter(({ kind, pull }) => pull.tool === tool && (kind === 'tightening' || kind === 'continuation'))
    .flatMap(({ pull: { fallMs, intervalUs } }) =>
      fallMs === undefined ? [] : [fallMs - intervalUs / 1000],
    );

type Seat = Pick<Coached, 'seat' | 'advised'>;

const UNKNOWN: Seat = { seat: null, advised: null };
/** A gasket that saw this share of the lower limit is a used one. Assumption. */
const CRUSHES = 0.5;

/**
 * What the plug came to sit on. A gasket that was pulled down before is a used one, whatever the order says of it; where
 * several strokes brought the plug home, or somebody took it out by command, none of them tells.
 */
function seatOf({ order }: JobState, c: CylinderState, pull: number, lowerNm: number): Seat {
  const before = c.pulls.filter((attempt) => attempt.pull.pull < pull);
  const newPlug = before.findLastIndex(({ answer }) => answer === 'replace');
  const onThisPlug = before.slice(newPlug + 1);
  if (onThisPlug.at(-1)?.kind === 'run-down' || (c.restartedAfter ?? pull) < pull) return UNKNOWN;
  const { seat, gasket, condition } = order.plug;
  const tightening = tighteningOf(order.specification);
  const advised = tightening.ok
    ? tightening.value.kind === 'torque'
      ? tightening.value.advised
      : tightening.value.turn
    : null;
  if (seat === 'conical') return { seat: 'conical', advised };
  if (onThisPlug.some((one) => crushed(one, lowerNm))) return { seat: 'used gasket', advised: null };
  const ordered = gasket ?? (condition === 'used' ? null : 'new');
  return ordered === null ? UNKNOWN : { seat: `${ordered} gasket`, advised };
}

const crushed = ({ pull, kind }: TorqueAttempt, lowerNm: number): boolean =>
  kind !== 'loosening' && pull.peakNm >= CRUSHES * lowerNm;
