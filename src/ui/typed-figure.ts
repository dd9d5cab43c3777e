/** Lines that somebody, or a gauge, typed: each names its quantity, and what no tool can have read is refused at once. */
import type { InstrumentInUse } from '../instrument/instrument.ts';
import type { JobState } from '../job/state.ts';
import { parseTorque } from '../quantity/range.ts';
import { torqueText } from '../quantity/shown.ts';
import { newtonMetres } from '../quantity/torque.ts';
import type { Quantity } from '../reading.ts';
import { w } from '../words/catalogue.ts';
import { nextTask } from './next-step.ts';

const OF_TORQUE = /n\s*[.·⋅*]?\s*m\b|lb|kgf|kg/i;
const OF_LENGTH = /mm\b|µm|in\b|["″]/i;
const BARE = /^\+?\d*[.,]?\d+$/u;

/** The quantity of a typed line, for a station where more than one tool types. */
export function quantityOfLine(line: string, job: JobState): Quantity {
  if (OF_TORQUE.test(line)) return 'torque';
  if (OF_LENGTH.test(line)) return 'length';
  const { kind } = nextTask(job);
  return kind === 'pull' || kind === 'answer' ? 'torque' : 'length';
}

/** The unit of a figure that is typed without one, by what is typed at this station: that which the tool itself shows. */
export type TypedUnits = Readonly<Partial<Record<Quantity, string>>>;

/** A figure as it will be taken: one without a unit has that of its tool, whatever the screen is in. */
export function asTaken(figure: string, job: JobState, units: TypedUnits): string {
  if (!BARE.test(figure.trim())) return figure;
  const [only, ...more] = Object.values(units);
  const unit = more.length === 0 ? only : units[quantityOfLine(figure, job)];
  return unit === undefined ? figure : `${figure} ${unit}`;
}

const quantitiesTyped = (job: JobState): ReadonlySet<Quantity> =>
  new Set(
    Object.values(job.tools).flatMap(({ source, description }) =>
      source === 'typed' && description !== undefined ? [description.quantity] : [],
    ),
  );

/** The largest torque that the wrench can show: of its range, or else of its certificate; null where nobody stated one. */
function highestNm({ range, certificate }: InstrumentInUse): number | null {
  if (range !== undefined) return range.to;
  if (certificate === undefined) return null;
  return Math.max(...certificate.points.map(({ reading }) => newtonMetres(reading, 'N.m')));
}

/** Why a typed torque cannot have been read; null where it can, and for lines that are no torque. */
export function impossibleTorque(line: string, job: JobState, units: TypedUnits = {}): string | null {
  const typed = quantitiesTyped(job);
  if (!typed.has('torque')) return null;
  if (typed.has('length') && quantityOfLine(line, job) !== 'torque') return null;
  const text = line.trim();
  const parsed = parseTorque(
    BARE.test(text) ? `${text.replace(/^\+/, '').replace(/^[.,]/, '0.')} ${units.torque ?? 'N·m'}` : text,
  );
  if (!parsed.ok) return null;
  const nm = newtonMetres(parsed.value.figure, parsed.value.unit);
  const wrenches = job.instruments.filter(
    ({ id, quantity }) => quantity === 'torque' && job.tools[id]?.source === 'typed',
  );
  const highest = wrenches.map(highestNm);
  if (highest.some((most) => most === null || nm <= most)) return null;
  const most = Math.max(...highest.map((one) => one ?? 0));
  return w`${torqueText(nm)} is not possible: this wrench shows ${torqueText(most)} at most. It is not taken. Read the wrench again.`;
}
