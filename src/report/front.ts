import type { AttemptRow } from './attempts.ts';
import { drawChecklist } from './checklist-drawing.ts';
import { enginePicture, pictureHeight } from './engine-picture.ts';
import type { ExceptionRow } from './exceptions.ts';
import { figure, percent } from './figures.ts';
import type { CylinderRow, ReportModel } from './model.ts';
import { GREY, heightOf, paragraph, type Sheet, section, TEXT_WIDTH } from './sheet.ts';
import { type Cell, type Column, startHeight, table } from './table.ts';
import { VERDICT_WORD } from './verdict.ts';
import { noted, OUT_OF_ORDER } from './words/index.ts';

/** What happened: the engine, every measurement, every exception, and the instruments used. */
export function drawFront(sheet: Sheet, model: ReportModel): void {
  const engine = section(sheet, 'Engine and verdict for each cylinder', pictureHeight(model.banks));
  enginePicture(sheet, engine, model.banks, model.positions);
  measurements(sheet, model);
  turns(sheet, model);
  drawChecklist(sheet, model.around);
  exceptions(sheet, model);
  instruments(sheet, model);
}

const COLUMNS: readonly Column[] = [
  { title: 'Cyl.', share: 20, heads: true },
  { title: 'Gap at, UTC', share: 35 },
  { title: 'Gap mm', share: 26, align: 'right' },
  { title: '± U mm', share: 28, align: 'right' },
  { title: 'Gap verdict', share: 76 },
  { title: 'Pull no.', share: 20, align: 'right' },
  { title: 'Pull at, UTC', share: 35 },
  { title: 'Kind', share: 43 },
  { title: 'Peak N·m', share: 29, align: 'right' },
  { title: '± U N·m', share: 28, align: 'right' },
  { title: 'First release N·m', share: 34, align: 'right' },
  { title: 'Follow-through N·m', share: 40, align: 'right' },
  { title: 'Prob. within limits', share: 33, align: 'right' },
  { title: 'Torque verdict', share: 76 },
];

/** With an adapter there is a column more: what the wrench itself showed. */
const WRENCH_AT = COLUMNS.findIndex(({ title }) => title === 'Peak N·m');

function columnsOf({ positions, adapter }: ReportModel): readonly Column[] {
  const columns = COLUMNS.map((column, i) => (i === 0 ? { ...column, title: positions.column } : column));
  if (!adapter) return columns;
  const shown: Column = { title: 'Wrench showed', share: 34, align: 'right' };
  const atPlug = columns.map((column, i) =>
    i === WRENCH_AT ? { ...column, title: 'Peak at plug' } : column,
  );
  return [...atPlug.slice(0, WRENCH_AT), shown, ...atPlug.slice(WRENCH_AT)];
}

function measurements(sheet: Sheet, model: ReportModel): void {
  const rows = model.cylinders.flatMap((row) => rowsOf(row, model));
  const columns = columnsOf(model);
  const element = section(sheet, 'Gap and torque, every attempt', startHeight(sheet, columns, rows));
  table(sheet, element, columns, rows);
  sheet.y += 4;
  paragraph(
    sheet,
    element,
    'U: expanded uncertainty of this reading, 95 %. Attempts are in their order. First release: the click. Follow-through: peak minus first release. Prob.: the probability that the true value is within the limits.',
    { size: 7, colour: GREY },
  );
}

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
function turns(sheet: Sheet, { cylinders, positions }: ReportModel): void {
  const rows = cylinders
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
    ]);
  if (rows.length === 0) return;
  const element = section(sheet, 'Turn of each plug, measured', startHeight(sheet, TURN_COLUMNS, rows));
  table(sheet, element, TURN_COLUMNS, rows);
  sheet.y += 4;
  paragraph(
    sheet,
    element,
    'Plug turned: without the wind-up of the tools, which is the same at the same torque on the way up and on the way down. Snug point: the slope of the torque from 50 to 90 %, carried back to no torque.',
    { size: 7, colour: GREY },
  );
}

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
  const text = verdictWord + graded + (outOfOrder === '' ? '' : `, ${OUT_OF_ORDER}`);
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

function exceptions(sheet: Sheet, model: ReportModel): void {
  const title = 'Exceptions, and who entered or accepted them';
  const important = model.exceptions.filter(({ matters }) => matters);
  const others = model.exceptions.filter(({ matters }) => !matters);
  if (important.length === 0)
    paragraph(sheet, section(sheet, title, heightOf(sheet, 'None', { size: 8, width: TEXT_WIDTH })), 'None.');
  else exceptionTable(sheet, title, important);
  if (others.length > 0) exceptionTable(sheet, 'What else happened on the way', others);
}

function exceptionTable(sheet: Sheet, title: string, all: readonly ExceptionRow[]): void {
  const rows = all.map(({ at, what, who }) => [{ text: at }, { text: what }, { text: who }]);
  table(sheet, section(sheet, title, startHeight(sheet, EXCEPTION_COLUMNS, rows)), EXCEPTION_COLUMNS, rows);
}

const INSTRUMENT_COLUMNS: readonly Column[] = [
  { title: 'Instrument', share: 62, heads: true },
  { title: 'Serial as listed', share: 62 },
  { title: 'Permissible deviation and step', share: 110 },
  { title: 'Basis of the uncertainty', share: 115 },
  { title: 'As it called itself', share: 95 },
  { title: 'How the readings came', share: 110 },
];

function instruments(sheet: Sheet, model: ReportModel): void {
  const rows = model.instruments.map((row) => [
    { text: `${row.id} (${row.measures})` },
    { text: row.serial },
    { text: row.deviation },
    { text: row.basis },
    { text: row.device },
    { text: row.link },
  ]);
  const following = startHeight(sheet, INSTRUMENT_COLUMNS, rows);
  table(sheet, section(sheet, 'Instruments and calibration basis', following), INSTRUMENT_COLUMNS, rows);
}
