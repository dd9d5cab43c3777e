/** The paper of an impact assessment, as an auditor reads it. */

import type { Sort } from '../audit/impact.ts';
import { type AsFoundPoint, asFoundPoints } from '../audit/impact-span.ts';
import type { ImpactAssessment, ItemState } from '../audit/impact-state.ts';
import { marksOf } from '../job/proof.ts';
import { figure, UNIT_TEXT, type Unit, utc } from './figures.ts';
import {
  byGravity,
  counted,
  cylindersOf,
  decisionWords,
  outcomeOf,
  proofWords,
  SORT_WORD,
  sortWords,
  standOf,
} from './impact.ts';
import type { Paper, Part } from './paper.ts';
import type { Cell, Column } from './table.ts';
import type { Verdict } from './verdict.ts';

export interface ImpactContext {
  /** Size and root of the log, as a checkpoint signed it; null where the paper is only shown. */
  readonly log: { readonly size: number; readonly root: string } | null;
  readonly program: string;
}

export function impactPaper(impact: ImpactAssessment, { log, program }: ImpactContext): Paper {
  const { assessment, assessed, at, by, asFound, items, closed } = impact;
  const { tool, serial, lastGood, sources, attempts, from, to, foundOn, digest } = assessed;
  const laboratory = asFound?.laboratory ?? 'laboratory not known';
  return {
    title: 'Impact assessment',
    subtitle: `${assessment}: ${tool}, serial ${serial}`,
    status: outcomeOf(impact),
    marks: marksOf(sources),
    facts: [
      { label: 'Tool', value: `${tool}, serial ${serial}` },
      { label: 'As found', value: `${assessed.asFound}, ${laboratory}, ${foundOn}` },
      {
        label: 'Last good check',
        value: lastGood === null ? 'none in this log' : `${lastGood.number} of ${lastGood.date}`,
      },
      { label: 'Judged again', value: `${counted(attempts, 'attempt')} from ${from} to ${to}` },
      { label: 'Assessed', value: `${utc(at)} by ${by}` },
      {
        label: 'Closed',
        value: closed === null ? 'no' : `${utc(closed.at)} by ${closed.by}: ${closed.because ?? ALL_HOLD}`,
      },
      ...(log === null
        ? []
        : [{ label: 'Signed log', value: `${log.size} entries, root ${log.root.slice(0, 32)}...` }]),
      { label: 'As-found SHA-256', value: digest },
    ],
    parts: [
      { kind: 'text', title: 'Why this was done, and how', paragraphs: WHY, paperOnly: true },
      {
        kind: 'text',
        title: 'What was judged again',
        paragraphs: [proofWords(assessed), ...untested(impact)],
      },
      asFoundPart(impact),
      vehiclesPart(items),
      ...proofsPart(items),
      ...decisionsPart(items),
    ],
    footer: `Impact assessment ${assessment} · ${serial}`,
    program,
    madeAt: lastChange(impact),
  };
}

/** When it was closed, else last decided, else assessed: the same state gives the same file. */
function lastChange({ at, items, closed }: ImpactAssessment): string {
  const decided = items.flatMap((item) => item.decided.map((one) => one.at)).sort();
  return closed?.at ?? decided.at(-1) ?? at;
}

const ALL_HOLD = 'every proof holds with what was found';

const WHY = [
  'A tool that is out of tolerance at calibration puts earlier results in question. ISO 9001:2015, 7.1.5.2 asks whether they are affected, and for action. IATF 16949, 7.1.5.2.1 asks for a record of what was found, of the risk for what was delivered, and of the notice to the customer where suspect work went out.',
  'Every attempt since the last good check was judged again by the rules of its day. The error that was found was taken off the reading, and its uncertainty took the place of the old one. STILL IN: proven within the limits. DOUBTFUL: too close to a limit to tell, or read beyond the points that were tested. OUT: beyond the limits if the tool had this error that day already. "With both": the value of that day was beyond the limits too.',
  'Nobody knows when the tool moved between the two checks. What is OK with the old error and with the new one is OK with every error between them. The verdicts of the day stay in the log as they are; this assessment was added to it.',
] as const;

/** Without it, an assessment with too few points looks like one of a tool that was far out. */
function untested({ asFound, items }: ImpactAssessment): readonly string[] {
  const beyond = items.flatMap(({ attempts }) => attempts).filter(({ covered }) => !covered).length;
  if (beyond === 0 || asFound === null) return [];
  const { unit, points } = asFound;
  const readings = points.map(({ reading }) => reading);
  const [from, to] = [Math.min(...readings), Math.max(...readings)].map((reading) => figure(reading, unit));
  return [
    `${beyond} of the doubtful ones were read beyond the points that the laboratory tested, ${from} to ${to} ${UNIT_TEXT[unit]}. Nobody knows the error there.`,
  ];
}

const FINDING_WORD: Readonly<Record<AsFoundPoint['finding'], string>> = {
  moved: 'MOVED',
  'not-moved': 'not moved',
  unknown: 'nothing to compare with',
};

function asFoundPart({ asFound, lastGood }: ImpactAssessment): Part {
  const unit: Unit = asFound?.unit ?? 'N.m';
  const rows = asFound === null ? [] : asFoundPoints(asFound, lastGood);
  const before =
    lastGood === null
      ? ''
      : `, beside those of ${lastGood.number} of ${lastGood.date}. MOVED: by more than the uncertainty of both`;
  return {
    kind: 'table',
    title: 'What the laboratory found',
    note: `Errors in ${UNIT_TEXT[unit]}, U at 95 %${before}.`,
    columns: [
      { title: 'Reading', share: 1, align: 'right', heads: true },
      ...(lastGood === null ? [] : AT_LAST_CHECK),
      { title: 'Error found', share: 1.2, align: 'right' },
      { title: 'U', share: 0.8, align: 'right' },
      { title: 'Finding', share: 3 },
    ],
    rows: rows.map(({ reading, error, expanded, was, finding }) => [
      { text: figure(reading, unit) },
      ...(was === null ? [] : [{ text: signed(was.error, unit) }, { text: figure(was.expanded, unit) }]),
      { text: signed(error, unit) },
      { text: figure(expanded, unit) },
      { text: FINDING_WORD[finding] },
    ]),
  };
}

const AT_LAST_CHECK: readonly Column[] = [
  { title: 'Error at the last check', share: 1.5, align: 'right' },
  { title: 'U', share: 0.8, align: 'right' },
];

const SORT_VERDICT: Readonly<Record<Sort, Verdict>> = {
  'still-in': 'ok',
  doubtful: 'not-decidable',
  out: 'not-ok',
};

const DECISIONS_ARE =
  'Recall: the vehicle is called back; open until it is redone. Inform: its owner was told. Accept: left as it is. Redone: done again in a later job.';

function vehiclesPart(items: readonly ItemState[]): Part {
  return {
    kind: 'table',
    title: 'Vehicles to decide about',
    note: items.length === 0 ? 'None: every proof holds with the errors found.' : DECISIONS_ARE,
    columns: [
      { title: 'Job', share: 1.4, heads: true },
      { title: 'Day', share: 1.3 },
      { title: 'VIN', share: 2.4 },
      { title: 'Plate, fleet number', share: 1.6 },
      { title: 'Worst', share: 1.7 },
      { title: 'Cylinders out', share: 1.2 },
      { title: 'Cylinders doubtful', share: 1.3 },
      { title: 'Decision', share: 1.8 },
    ],
    rows: [...items]
      .sort(byGravity)
      .map((item): Cell[] => [
        { text: item.job },
        { text: item.on },
        { text: item.vin ?? 'not given' },
        { text: [item.plate, item.fleet].filter((one) => one !== null).join(', ') || 'not given' },
        { text: SORT_WORD[item.sort], verdict: SORT_VERDICT[item.sort], bold: true },
        { text: cylindersOf(item, 'out') },
        { text: cylindersOf(item, 'doubtful') },
        { text: standOf(item), bold: item.open },
      ]),
  };
}

const WITH_BOTH =
  '"Then" is the value at the plug as judged that day. "Now" takes the error found off the reading, as if the tool had had it that day already. OUT, with both: beyond the limits either way. DOUBTFUL: too close to a limit to tell.';

function proofsPart(items: readonly ItemState[]): readonly Part[] {
  if (items.length === 0) return [];
  return [
    {
      kind: 'table',
      title: 'Proofs that do not hold any more',
      note: WITH_BOTH,
      columns: [
        { title: 'Job', share: 1.6, heads: true },
        { title: 'Cylinder', share: 0.9, align: 'right' },
        { title: 'Attempt', share: 1.3 },
        { title: 'Then', share: 1, align: 'right' },
        { title: 'Now', share: 1, align: 'right' },
        { title: 'U', share: 0.8, align: 'right' },
        { title: 'Limits', share: 2 },
        { title: 'Finding', share: 2.2 },
      ],
      rows: [...items].sort(byGravity).flatMap((item) =>
        item.attempts.map((one): Cell[] => {
          const unit: Unit = one.quantity === 'torque' ? 'N.m' : 'mm';
          return [
            { text: item.job },
            { text: String(one.cylinder) },
            { text: `${one.quantity === 'torque' ? 'pull' : 'gap'} ${one.number}` },
            { text: one.was === null ? 'not judged' : figure(one.was, unit) },
            { text: figure(one.value, unit), bold: true },
            { text: figure(one.expanded, unit) },
            {
              text: `${figure(one.lowerLimit, unit)} to ${figure(one.upperLimit, unit)} ${UNIT_TEXT[unit]}`,
            },
            { text: sortWords(one), verdict: SORT_VERDICT[one.sort] },
          ];
        }),
      ),
    },
  ];
}

function decisionsPart(items: readonly ItemState[]): readonly Part[] {
  const decisions = items
    .flatMap(({ job, decided }) => decided.map((one) => ({ job, ...one, words: decisionWords(one) })))
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
  if (decisions.length === 0) return [];
  return [
    {
      kind: 'table',
      title: 'Decisions',
      note: '',
      columns: [
        { title: 'When', share: 2.3, heads: true },
        { title: 'Job', share: 1.5 },
        { title: 'Decision', share: 1.6 },
        { title: 'Why', share: 4 },
        { title: 'By', share: 1.6 },
      ],
      rows: decisions.map(({ at, job, words, because, by }) =>
        [utc(at), job, words, because, by].map((text) => ({ text })),
      ),
    },
  ];
}

const signed = (value: number, unit: Unit) => `${value > 0 ? '+' : ''}${figure(value, unit)}`;
