import { compareTorque, limitsNm } from '../quantity/compare.ts';
import { lubricatedShare } from './friction.ts';
import { generalTable, type TableRow } from './general-table.ts';
import { SOURCE_WORDS } from './precedence.ts';
import type { Fit, Plug, Specification } from './specification.ts';
import type { TorqueLimits } from './tightening.ts';

/** The hull of the published tables, and the torque on which all of them agree; null where there is none. */
export interface TableView {
  readonly rows: readonly TableRow[];
  readonly lowestNm: number;
  readonly highestNm: number;
  readonly common: TorqueLimits | null;
}

/** The tables for a fit taken together; null where no publisher gives a figure. */
export function tableView(fit: Fit): TableView | null {
  const rows = generalTable(fit);
  if (rows.length === 0) return null;
  const limits = rows.map((row) => limitsNm(row));
  const lowerNm = Math.max(...limits.map((row) => row.lowerNm));
  const upperNm = Math.min(...limits.map((row) => row.upperNm));
  const common = rows.every((row) => compareTorque(lowerNm, row) !== 'high') ? { lowerNm, upperNm } : null;
  return {
    rows,
    lowestNm: Math.min(...limits.map((row) => row.lowerNm)),
    highestNm: Math.max(...limits.map((row) => row.upperNm)),
    common,
  };
}

const short = (nm: number) => String(Number(nm.toFixed(1)));

function tablesSay({ lowestNm, highestNm }: TableView, { seat, head }: Fit): string {
  return `General tables say ${short(lowestNm)} to ${short(highestNm)} N·m (${seat} seat, ${head} head).`;
}

/** What a reader of the window should know about its figures; each a sentence, none of them a verdict. */
export function notesOn(specification: Specification, limits: TorqueLimits, plug: Plug, fit: Fit): string[] {
  return [
    ...tableNotes(specification, limits, fit),
    ...(specification.also ?? []).map(
      ({ torque, threads, source }) =>
        `Set aside: ${SOURCE_WORDS[source.kind]} (${source.title}) says ${torque} on ${threads} threads.`,
    ),
    ...threadNotes(specification, plug),
    ...(plug.condition === 'used' ? ['A used plug goes back into the cylinder it came from.'] : []),
    ...(plug.gasket === 'used' ? ['A used gasket takes far less angle than a new one.'] : []),
  ];
}

/** The same about who answers for them: personal, and no part of what is signed. */
export function namesOn({ checkedBy, reduction }: Specification): string[] {
  return [
    ...(checkedBy === undefined ? [] : [`The figure was checked by ${checkedBy}.`]),
    ...(reduction === undefined
      ? []
      : [`The rule for ${reduction.lubricant} threads was set by ${reduction.setBy}.`]),
  ];
}

function tableNotes({ source }: Specification, { lowerNm, upperNm }: TorqueLimits, fit: Fit): string[] {
  const table = tableView(fit);
  if (table === null) return ['No general table has a figure for this thread and seat.'];
  const notes: string[] = [];
  const within = table.rows.some(
    (row) => compareTorque(lowerNm, row) === 'inside' && compareTorque(upperNm, row) === 'inside',
  );
  if (!within)
    notes.push(
      `${tablesSay(table, fit)} No table holds the whole of this range; a better source goes before them.`,
    );
  if (table.common === null)
    notes.push('The publishers of general tables disagree: no torque suits all of them.');
  if (source.kind === 'general-table')
    notes.push('GENERAL TABLE: the figure is not for this engine. Look for the engine maker’s figure first.');
  return notes;
}

function threadNotes({ threads, reduction }: Specification, plug: Plug): string[] {
  if (reduction === undefined)
    return threads === 'dry' ? ['No oil and no anti-seize: the figure assumes dry threads.'] : [];
  const usual = (1 - lubricatedShare(plug.thread, 0.15, 0.1)) * 100;
  return [
    `Reduced by ${reduction.percent} % for ${reduction.lubricant} threads: the shop's own rule; the source does not say so.`,
    `For the same clamp force, friction falling from 0.15 to 0.10 would ask for ${usual.toFixed(0)} % less (Motosh; seat ring assumed).`,
  ];
}
