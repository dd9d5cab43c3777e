import { compareTorque, limitsNm } from '../quantity/compare.ts';
import { lubricatedShare } from './friction.ts';
import { generalTable, type TableRow } from './general-table.ts';
import type { Note } from './note.ts';
import type { Fit, Plug, Specification } from './specification.ts';
import { shopPercent, type Tightening, type TorqueLimits, type Turn } from './tightening.ts';

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

/** What a reader of the window should know about its figures; none of it is a verdict. `tightening`: as it was read. */
export function notesOn(specification: Specification, tightening: Tightening, plug: Plug, fit: Fit): Note[] {
  return [
    ...(tightening.kind === 'torque'
      ? tableNotes(specification, tightening.limits, fit)
      : angleNotes(tightening.turn)),
    ...singleFigureNotes(specification),
    ...(specification.also ?? []).map(
      ({ torque, threads, source: { kind, title } }): Note => ({
        code: 'source-set-aside',
        source: kind,
        title,
        torque,
        threads,
      }),
    ),
    ...threadNotes(specification, plug),
    ...(plug.condition === 'used' ? [{ code: 'plug-used' } as const] : []),
    ...(plug.gasket === 'used' ? [{ code: 'gasket-used' } as const] : []),
  ];
}

const angleNotes = ({ lowerDeg, upperDeg }: Turn): Note[] => [
  { code: 'by-angle-alone' },
  ...(lowerDeg < upperDeg ? [] : [{ code: 'turn-without-tolerance' } as const]),
];

function tableNotes({ source }: Specification, { lowerNm, upperNm }: TorqueLimits, fit: Fit): Note[] {
  const table = tableView(fit);
  if (table === null) return [{ code: 'no-general-table' }];
  const { lowestNm, highestNm } = table;
  const { seat, head } = fit;
  const within = table.rows.some(
    (row) => compareTorque(lowerNm, row) === 'inside' && compareTorque(upperNm, row) === 'inside',
  );
  const notes: Note[] = [];
  if (!within) notes.push({ code: 'outside-general-tables', lowestNm, highestNm, seat, head });
  if (table.common === null) notes.push({ code: 'general-tables-disagree' });
  if (source.kind === 'general-table') notes.push({ code: 'general-table-used' });
  return notes;
}

function singleFigureNotes(specification: Specification): Note[] {
  const percent = shopPercent(specification);
  return percent === null ? [] : [{ code: 'single-figure', percent }];
}

/** Clean dry threads, and the same with oil or paste on them: usual figures of the trade. */
const [FRICTION_DRY, FRICTION_LUBRICATED] = [0.15, 0.1];

function threadNotes({ threads, reduction }: Specification, plug: Plug): Note[] {
  if (reduction === undefined) return threads === 'dry' ? [{ code: 'threads-dry' }] : [];
  const { percent, lubricant } = reduction;
  const usual = (1 - lubricatedShare(plug.thread, FRICTION_DRY, FRICTION_LUBRICATED)) * 100;
  return [
    { code: 'torque-reduced', percent, lubricant },
    {
      code: 'reduction-by-friction',
      frictionDry: FRICTION_DRY,
      frictionLubricated: FRICTION_LUBRICATED,
      percent: Math.round(usual),
    },
  ];
}
