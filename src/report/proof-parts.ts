/** The tables of the proof, for every way of printing: columns, rows, and a note on how to read them. */
import { shownUnit } from '../quantity/shown.ts';
import { w } from '../words/catalogue.ts';
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

export const inventedSentence = (): string =>
  w`INVENTED SPECIFICATION: the figures of this job are an example and belong to no real engine.`;

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
          { label: w`First step limits`, value: first.limits },
          { label: w`First step accepted`, value: first.acceptance },
        ]),
    ...(turnLimits === null
      ? []
      : [{ label: w`Turn limits`, value: w`${turnLimitsText(turnLimits)} from contact` }]),
    turnLimits?.alone === true
      ? {
          label: w`Torque usual`,
          value: w`${torqueWindow.limits}, by general tables; outside of that never OK`,
        }
      : { label: w`Torque limits`, value: torqueWindow.limits },
    { label: w`Torque accepted`, value: torqueWindow.acceptance },
    { label: w`Torque guard band`, value: torqueWindow.guard },
    ...(gapWindow === null
      ? [{ label: w`Gap`, value: w`not measured, as the specification says` }]
      : [
          { label: w`Gap limits`, value: gapWindow.limits },
          { label: w`Gap accepted`, value: gapWindow.acceptance },
          { label: w`Gap guard band`, value: gapWindow.guard },
        ]),
  ];
}

/** So much wider is the number of a plug that names its cylinder too. */
const PLUG_NUMBER = 22;
const WRENCH_SHOWED = 34;
/** A torque has longer verdicts. */
const VERDICT = { gap: 71, torque: 74 } as const;

/** With an adapter there is a column more: what the wrench itself showed. What is added comes off the verdicts, which have room. */
function columnsOf({ positions, adapter }: ReportModel): readonly Column[] {
  const [nm, mm] = [shownUnit('N.m'), shownUnit('mm')];
  const ofPlugs = positions.note !== null;
  const less = ((ofPlugs ? PLUG_NUMBER : 0) + (adapter ? WRENCH_SHOWED : 0)) / 2;
  const number = (title: string, share: number): Column => ({ title, share, align: 'right' });
  return [
    { title: positions.column, share: ofPlugs ? 20 + PLUG_NUMBER : 20, heads: true },
    { title: w`Gap at, UTC`, share: 35 },
    number(w`Gap ${mm}`, 28),
    number(w`± U ${mm}`, 28),
    { title: w`Gap verdict`, share: VERDICT.gap - less },
    number(w`Pull no.`, 20),
    { title: w`Pull at, UTC`, share: 35 },
    { title: w`Kind`, share: 49 },
    ...(adapter
      ? [number(w`Wrench showed`, WRENCH_SHOWED), number(w`Peak at plug`, 29)]
      : [number(w`Peak ${nm}`, 29)]),
    number(w`± U ${nm}`, 28),
    number(w`First release ${nm}`, 34),
    number(w`Follow-through ${nm}`, 36),
    number(w`Prob. within limits`, 36),
    { title: w`Torque verdict`, share: VERDICT.torque - less },
  ];
}

export const measurements = (model: ReportModel): TablePart => ({
  title: w`Gap and torque, every attempt`,
  columns: columnsOf(model),
  rows: model.cylinders.flatMap((row) => rowsOf(row, model)),
  note: w`U: expanded uncertainty of this reading, 95 %. Attempts are in their order. First release: the click. Follow-through: peak minus first release. Prob.: the probability that the true value is within the limits.`,
});

const turnColumns = (): readonly Column[] => [
  { title: w`Cyl.`, share: 24, heads: true },
  { title: w`Pull no.`, share: 30, align: 'right' },
  { title: w`Kind`, share: 60 },
  { title: w`Plug turned °`, share: 56, align: 'right' },
  { title: w`± U °`, share: 40, align: 'right' },
  { title: w`To the snug point °`, share: 62, align: 'right' },
  { title: w`From the snug point °`, share: 66, align: 'right' },
  { title: w`Tools wound up °`, share: 60, align: 'right' },
  { title: w`Note`, share: 125 },
];

/** Only of jobs whose wrench sends its angle. */
export const turns = ({ cylinders, positions }: ReportModel): TablePart => ({
  title: w`Turn of each plug, measured`,
  columns: turnColumns(),
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
  note: w`Plug turned: without the wind-up of the tools, which is the same at the same torque on the way up and on the way down. Snug point: the slope of the torque from 50 to 90 %, carried back to no torque.`,
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
const notDone = (): Cell => ({ text: VERDICT_WORD['not-done'], verdict: 'not-done', bold: true });

function gapCells(row: AttemptRow | undefined, index: number, grades: boolean): Cell[] {
  if (row === undefined) return [EMPTY, EMPTY, EMPTY, index === 0 ? notDone() : EMPTY];
  return [
    timeCell(row),
    { text: row.valueText },
    number(row.expandedUncertainty, 'mm'),
    verdictCell(row, grades),
  ];
}

const nothingPulled = ({ verdict }: CylinderRow): Cell =>
  verdict === 'by-angle' ? { text: VERDICT_WORD[verdict], verdict, bold: true } : notDone();

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
    row.releaseNm === null ? { text: w`none` } : number(row.releaseNm, 'N.m'),
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

const exceptionColumns = (): readonly Column[] => [
  { title: w`When`, share: 94, heads: true },
  { title: w`What`, share: 361 },
  { title: w`Entered by`, share: 68 },
];

/** Those that a reader of the verdict has to know come first. */
export const exceptions = (model: ReportModel): readonly TablePart[] => {
  const part = (title: string, matters: boolean, note: string): TablePart => ({
    title,
    columns: exceptionColumns(),
    rows: model.exceptions
      .filter((row) => row.matters === matters)
      .map(({ at, what, who }) => [{ text: at }, { text: what }, { text: who }]),
    note,
  });
  const others = part(w`What else happened on the way`, false, '');
  return [
    part(w`Exceptions, and who entered or accepted them`, true, ''),
    ...(others.rows.length === 0 ? [] : [others]),
  ];
};

const instrumentColumns = (): readonly Column[] => [
  { title: w`Instrument`, share: 86, heads: true },
  { title: w`Serial as listed`, share: 60 },
  { title: w`Permissible deviation and step`, share: 104 },
  { title: w`Basis of the uncertainty`, share: 110 },
  { title: w`As it called itself`, share: 90 },
  { title: w`How the readings came`, share: 104 },
];

export const instruments = (model: ReportModel): TablePart => ({
  title: w`Instruments and calibration basis`,
  columns: instrumentColumns(),
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
