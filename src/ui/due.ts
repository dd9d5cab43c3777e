/** The cylinder that is due, its place on the engine, and the one behind it. */
import { jumpedTo } from '../job/situation.ts';
import { isOver, type JobState } from '../job/state.ts';
import { called } from '../sequence/plan.ts';
import { phrases, w } from '../words/catalogue.ts';
import type { Glyphs } from './glyphs.ts';
import type { Line } from './line.ts';
import { nextTask } from './next-step.ts';
import { columnsOf } from './printable.ts';

/** The cylinder of the next step, or that a question is about; null where none is. */
export function dueCylinder(job: JobState): number | null {
  const task = nextTask(job);
  return 'cylinder' in task ? task.cylinder : null;
}

const ORDINALS = phrases(['1st', '2nd', '3rd']);
const ordinal = (n: number): string => ORDINALS[n - 1] ?? w`${n}th`;

/** `lower row, 2nd of 4 from the front`: as the engine is drawn. */
export function placeOnEngine({ order }: JobState, cylinder: number): string {
  const { banks } = order.engine;
  const at = banks.findIndex((bank) => bank.includes(cylinder));
  const bank = banks[at] ?? [];
  const along = w`${ordinal(bank.indexOf(cylinder) + 1)} of ${bank.length} from the front`;
  if (banks.length === 1) return along;
  const row = banks.length > 2 ? w`row ${at + 1}` : at === 0 ? w`upper row` : w`lower row`;
  return `${row}, ${along}`;
}

/** The next open one behind the due one, the way round. */
function behind({ cylinders }: JobState, due: number, which: 'gap' | 'torque'): number | null {
  const from = cylinders.findIndex(({ cylinder }) => cylinder === due);
  const round = [...cylinders.slice(from + 1), ...cylinders.slice(0, from)];
  return round.find((c) => !isOver(c[which]))?.cylinder ?? null;
}

/** `Pull: cylinder 4, lower row, 2nd of 4 from the front. Then 6.` A jump is said first. */
export function dueLine(job: JobState, columns: number, glyphs: Glyphs): Line | null {
  const due = dueCylinder(job);
  if (due === null) return null;
  const { kind } = nextTask(job);
  const jumped = kind === 'pull' && jumpedTo(job) === due;
  const what = jumped ? w`BACK TO` : kind === 'gap' ? w`Gap:` : kind === 'answer' ? w`Asked:` : w`Pull:`;
  const then = kind === 'answer' ? null : behind(job, due, kind === 'gap' ? 'gap' : 'torque');
  const pieces = [
    ` ${jumped ? glyphs.again : glyphs.pointer} ${what} ${called(job.order.engine, due)}`,
    `, ${placeOnEngine(job, due)}`,
    then === null ? '' : w`. Then ${then}`,
  ];
  const text = pieces.reduce((so, piece) => (columnsOf(so + piece) <= columns ? so + piece : so), '');
  return [{ text, bold: true, ...(jumped ? { tone: 'attention' as const, inverse: true } : {}) }];
}
