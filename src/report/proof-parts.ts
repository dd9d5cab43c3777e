/** The tables of the proof, for every way of printing: columns, rows, and a note on how to read them. */
import type { AttemptRow, CylinderRow } from './attempts.ts';
import type { Fact } from './fact.ts';
import { figure, percent } from './figures.ts';
import type { ReportModel } from './model.ts';
import type { Cell, Column } from './table.ts';
import { VERDICT_WORD } from './verdict.ts';
import { noted, outOfOrderWord, turnLimitsText } from './words/index.ts';

export interface TablePart {
  readonly title: string;
  readonly columns: readonly Column[];
  /** None: the thing did not happen. */
  readonly rows: readonly (readonly Cell[])[];
  readonly note: string;
}

export const INVENTED_SENTENCE =
  'INVENTED SPECIFICATION: the figures of this job are an example and belong to no real engine.';

/** The windows that everything was held against. */
export function windowFacts({
  torqueWindow,
  turnLimits,
  gapWindow,
  firstTorqueWindow: first,
}: ReportModel): readonly Fact[] {
  return [
    ...(first === null
      ? []
      : [
          { label: 'First step limits', value: first.limits },
          { label: 'First step accepted', value: first.acceptance },
        ]),
    ...(turnLimits === null
      ? []
      : [{ label: 'Turn limits', value: `${turnLimitsText(turnLimits)} from contact` }]),
    turnLimits?.alone === true
      ? {
          label: 'Torque usual',
          value: `${torqueWindow.limits}, by general tables; outside of that never OK`,
        }
      : { label: 'Torque limits', value: torqueWindow.limits },
    { label: 'Torque accepted', value: torqueWindow.acceptance },
    { label: 'Torque guard band', value: torqueWindow.guard },
    ...(gapWindow === null
      ? [{ label: 'Gap', value: 'not measured, as the specification says' }]
      : [
          { label: 'Gap limits', value: gapWindow.limits },
          { label: 'Gap accepted', value: gapWindow.acceptance },
          { label: 'Gap guard band', value: gapWindow.guard },
        ]),
  ];
}

const COLUMNS: readonly Column[] = [
  { title: 'Cyl.', share: 20, heads: true },
  { title: 'Gap at, UTC', share: 35 },
  { title: 'Gap mm', share: 26, align: 'right' },
  { title: '± U mm', share: 28, align: 'right' },
  { title: 'Gap verdict', share: 76 },
  { title: 'Pull no.', share: 20, align: 'right' },
  { title: 'Pull at, UTC', share: 35 },
  { title: 'Kind', share: 42 },
  { title: 'Peak N·m', share: 29, align: 'right' },
  { title: '± U N·m', share: 28, align: 'right' },
  { title: 'First release N·m', share: 34, align: 'right' },
  { title: 'Follow-through N·m', share: 36, align: 'right' },
  { title: 'Prob. within limits', share: 38, align: 'right' },
  { title: 'Torque verdict', share: 76 },
];

const SHOWN: Column = { title: 'Wrench showed', share: 34, align: 'right' };
/** So much wider is the number of a plug that names its cylinder too. */
const PLUG_NUMBER = 22;
const plugColumn = (column: Column, title: string): Column => ({
  ...column,
  title,
  share: column.share + PLUG_NUMBER,
});

/** With an adapter there is a column more: what the wrench itself showed. */
const WRENCH_AT = COLUMNS.findIndex(({ title }) => title === 'Peak N·m');

function columnsOf({ positions, adapter }: ReportModel): readonly Column[] {
  const more = (positions.note === null ? 0 : PLUG_NUMBER) + (adapter ? SHOWN.share : 0);
  const columns = COLUMNS.map((column, i) => {
    if (i === 0) return positions.note === null ? column : plugColumn(column, positions.column);
    // What is added comes off the verdicts, which have room.
    return /verdict/.test(column.title) ? { ...column, share: column.share - more / 2 } : column;
  });
  if (!adapter) return columns;
  const atPlug = columns.map((column, i) =>
    i === WRENCH_AT ? { ...column, title: 'Peak at plug' } : column,
  );
  return [...atPlug.slice(0, WRENCH_AT), SHOWN, ...atPlug.slice(WRENCH_AT)];
}

export const measurements = (model: ReportModel): TablePart => ({
  title: 'Gap and torque, every attempt',
  columns: columnsOf(model),
  rows: model.cylinders.flatMap((row) => rowsOf(row, model)),
  note: 'U: expanded uncertainty of this reading, 95 %. Attempts are in their order. First release: the click. Follow-through: peak minus first release. Prob.: the probability that the true value is within the limits.',
});

const TURN_COLUMNS: readonly Column[] = [
  { title: 'Cyl.', share: 24, heads: true },
  { title: 'Pull no.', share: 30, align: 'right' },
  { title: 'Kind', share: 60 },
  { title: 'Plug turned °', share: 56, align: 'right' },
  { title: '± U °', share: 40, align: 'right' },
  { title: 'To the snug point °', share: 62, align: 'right' },
  { title: 'From the snug point °', share: 66, align: 'right' },
  { title: 'Tools wound up °', share: 60, align: 'right' },
  { title: 'Note', share: 125 },
];

/** Only of jobs whose wrench sends its angle. */
export const turns = ({ cylinders, positions }: ReportModel): TablePart => ({
  title: 'Turn of each plug, measured',
  columns: TURN_COLUMNS,
  rows: cylinders
    .flatMap(({ pulls }) => pulls)
    .filter(({ turn, turnNote }) => turn !== null || turnNote !== '')
    .map(({ cylinder, pull, kind, turn, turnNote }): Cell[] => [
      { text: cylinder === null ? '' : positions.cell(cylinder), bold: true },
      { text: String(pull) },
      { text: kind },
      ...[turn?.turnedDeg, turn?.expandedUncertainty, turn?.runDownDeg, turn?.beyondDeg, turn?.windUpDeg].map(
        (deg) => ({ text: deg == null ? '' : figure(deg, 'deg') }),
      ),
      { text: turnNote },
    ]),
  note: 'Plug turned: without the wind-up of the tools, which is the same at the same torque on the way up and on the way down. Snug point: the slope of the torque from 50 to 90 %, carried back to no torque.',
});

function rowsOf(row: CylinderRow, { grades, adapter, positions }: ReportModel): Cell[][] {
  const count = Math.max(1, row.gaps.length, row.pulls.length);
  return Array.from({ length: count }, (_, index) => [
    { text: positions.cell(row.cylinder), bold: true },
    ...gapCells(row.gaps[index], index, grades),
    ...pullCells(row.pulls[index], index === 0 ? nothingPulled(row) : EMPTY, { grades, adapter }),
  ]);
}

const EMPTY: Cell = { text: '' };
const NOT_DONE: Cell = { text: 'NOT DONE', verdict: 'not-done', bold: true };

function gapCells(row: AttemptRow | undefined, index: number, grades: boolean): Cell[] {
  if (row === undefined) return [EMPTY, EMPTY, EMPTY, index === 0 ? NOT_DONE : EMPTY];
  return [
    timeCell(row),
    { text: row.valueText },
    number(row.expandedUncertainty, 'mm'),
    verdictCell(row, grades),
  ];
}

const nothingPulled = ({ verdict }: CylinderRow): Cell =>
  verdict === 'by-angle' ? { text: VERDICT_WORD[verdict], verdict, bold: true } : NOT_DONE;

function pullCells(
  row: AttemptRow | undefined,
  nothing: Cell,
  { grades, adapter }: { readonly grades: boolean; readonly adapter: boolean },
): Cell[] {
  if (row === undefined) return [...Array.from({ length: adapter ? 9 : 8 }, () => EMPTY), nothing];
  const { conformanceProbability: probability } = row;
  return [
    { text: String(row.pull ?? '') },
    timeCell(row),
    { text: row.kind },
    ...(adapter ? [number(row.wrenchNm, 'N.m')] : []),
    { text: row.valueText },
    number(row.expandedUncertainty, 'N.m'),
    row.releaseNm === null ? { text: 'none' } : number(row.releaseNm, 'N.m'),
    number(row.followThroughNm, 'N.m'),
    { text: probability === null ? '–' : percent(probability) },
    verdictCell(row, grades),
  ];
}

/** The day is that of the job; the list of exceptions has whole times. */
const timeCell = ({ at }: AttemptRow): Cell => ({ text: at.slice(11, 19) });

function number(value: number | null, unit: 'N.m' | 'mm'): Cell {
  return { text: value === null ? '–' : figure(value, unit) };
}

function verdictCell({ verdict, verdictWord, grade, source, outOfOrder }: AttemptRow, grades: boolean): Cell {
  const graded = grades && grade !== '' ? ` (${grade})` : '';
  const text = verdictWord + graded + (outOfOrder === '' ? '' : `, ${outOfOrderWord()}`);
  return {
    text: source === null || verdict === 'not-judged' ? text : noted(text, source),
    verdict,
    bold: (verdict !== 'ok' && verdict !== 'not-judged') || outOfOrder !== '',
  };
}

const EXCEPTION_COLUMNS: readonly Column[] = [
  { title: 'When', share: 94, heads: true },
  { title: 'What', share: 361 },
  { title: 'Entered by', share: 68 },
];

/** Those that a reader of the verdict has to know come first. */
export const exceptions = (model: ReportModel): readonly TablePart[] => {
  const part = (title: string, matters: boolean, note: string): TablePart => ({
    title,
    columns: EXCEPTION_COLUMNS,
    rows: model.exceptions
      .filter((row) => row.matters === matters)
      .map(({ at, what, who }) => [{ text: at }, { text: what }, { text: who }]),
    note,
  });
  const others = part('What else happened on the way', false, '');
  return [
    part('Exceptions, and who entered or accepted them', true, ''),
    ...(others.rows.length === 0 ? [] : [others]),
  ];
};

const INSTRUMENT_COLUMNS: readonly Column[] = [
  { title: 'Instrument', share: 62, heads: true },
  { title: 'Serial as listed', share: 62 },
  { title: 'Permissible deviation and step', share: 110 },
  { title: 'Basis of the uncertainty', share: 115 },
  { title: 'As it called itself', share: 95 },
  { title: 'How the readings came', share: 110 },
];

export const instruments = (model: ReportModel): TablePart => ({
  title: 'Instruments and calibration basis',
  columns: INSTRUMENT_COLUMNS,
  rows: model.instruments.map((row) => [
    { text: `${row.id} (${row.measures})` },
    { text: row.serial },
    { text: row.deviation },
    { text: row.basis },
    { text: row.device },
    { text: row.link },
  ]),
  note: '',
});
