/** The paper of an impact assessment, as an auditor reads it. */

import type { Sort } from '../audit/impact.ts';
import { type AsFoundPoint, asFoundPoints } from '../audit/impact-span.ts';
import type { ImpactAssessment, ItemState } from '../audit/impact-state.ts';
import { marksOf } from '../job/proof.ts';
import { shownLimit } from '../quantity/shown.ts';
import { phrases, w } from '../words/catalogue.ts';
import { figure, UNIT_TEXT, type Unit, utc } from './figures.ts';
import {
  attemptsText,
  byGravity,
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
  const laboratory = asFound?.laboratory ?? w`laboratory not known`;
  return {
    title: w`Impact assessment`,
    subtitle: w`${assessment}: ${tool}, serial ${serial}`,
    status: outcomeOf(impact),
    marks: marksOf(sources),
    facts: [
      { label: w`Tool`, value: w`${tool}, serial ${serial}` },
      { label: w`As found`, value: `${assessed.asFound}, ${laboratory}, ${foundOn}` },
      {
        label: w`Last good check`,
        value: lastGood === null ? w`none in this log` : `${lastGood.number} ${w`of ${lastGood.date}`}`,
      },
      { label: w`Judged again`, value: w`${attemptsText(attempts)} from ${from} to ${to}` },
      { label: w`Assessed`, value: w`${utc(at)} by ${by}` },
      {
        label: w`Closed`,
        value:
          closed === null
            ? w`no`
            : w`${utc(closed.at)} by ${closed.by}: ${closed.because ?? w`every proof holds with what was found`}`,
      },
      ...(log === null
        ? []
        : [{ label: w`Signed log`, value: w`${log.size} entries, root ${log.root.slice(0, 32)}...` }]),
      { label: w`As-found SHA-256`, value: digest },
    ],
    parts: [
      { kind: 'text', title: w`Why this was done, and how`, paragraphs: WHY, paperOnly: true },
      {
        kind: 'text',
        title: w`What was judged again`,
        paragraphs: [proofWords(assessed), ...untested(impact)],
      },
      asFoundPart(impact),
      vehiclesPart(items),
      ...proofsPart(items),
      ...decisionsPart(items),
    ],
    footer: w`Impact assessment ${assessment} · ${serial}`,
    program,
    madeAt: lastChange(impact),
  };
}

/** When it was closed, else last decided, else assessed: the same state gives the same file. */
function lastChange({ at, items, closed }: ImpactAssessment): string {
  const decided = items.flatMap((item) => item.decided.map((one) => one.at)).sort();
  return closed?.at ?? decided.at(-1) ?? at;
}

const WHY: readonly string[] = phrases([
  'A tool that is out of tolerance at calibration puts earlier results in question. ISO 9001:2015, 7.1.5.2 asks whether they are affected, and for action. IATF 16949, 7.1.5.2.1 asks for a record of what was found, of the risk for what was delivered, and of the notice to the customer where suspect work went out.',
  'Every attempt since the last good check was judged again by the rules of its day. The error that was found was taken off the reading, and its uncertainty took the place of the old one. STILL IN: proven within the limits. DOUBTFUL: too close to a limit to tell, or read beyond the points that were tested. OUT: beyond the limits if the tool had this error that day already. "With both": the value of that day was beyond the limits too.',
  'Nobody knows when the tool moved between the two checks. What is OK with the old error and with the new one is OK with every error between them. The verdicts of the day stay in the log as they are; this assessment was added to it.',
]);

/** Without it, an assessment with too few points looks like one of a tool that was far out. */
function untested({ asFound, items }: ImpactAssessment): readonly string[] {
  const beyond = items.flatMap(({ attempts }) => attempts).filter(({ covered }) => !covered).length;
  if (beyond === 0 || asFound === null) return [];
  const { unit, points } = asFound;
  const readings = points.map(({ reading }) => reading);
  const [from, to] = [Math.min(...readings), Math.max(...readings)].map((reading) => figure(reading, unit));
  return [
    w`${beyond} of the doubtful ones were read beyond the points that the laboratory tested, ${from ?? ''} to ${to ?? ''} ${UNIT_TEXT[unit]}. Nobody knows the error there.`,
  ];
}

const FINDING_WORD: Readonly<Record<AsFoundPoint['finding'], string>> = phrases({
  moved: 'MOVED',
  'not-moved': 'not moved',
  unknown: 'nothing to compare with',
});

function asFoundPart({ asFound, lastGood }: ImpactAssessment): Part {
  const unit: Unit = asFound?.unit ?? 'N.m';
  const rows = asFound === null ? [] : asFoundPoints(asFound, lastGood);
  return {
    kind: 'table',
    title: w`What the laboratory found`,
    note:
      lastGood === null
        ? w`Errors in ${UNIT_TEXT[unit]}, U at 95 %.`
        : w`Errors in ${UNIT_TEXT[unit]}, U at 95 %, beside those of ${lastGood.number} of ${lastGood.date}. MOVED: by more than the uncertainty of both.`,
    columns: [
      { title: w`Reading`, share: 1, align: 'right', heads: true },
      ...(lastGood === null ? [] : atLastCheck()),
      { title: w`Error found`, share: 1.2, align: 'right' },
      { title: w`U`, share: 0.8, align: 'right' },
      { title: w`Finding`, share: 3 },
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

const atLastCheck = (): readonly Column[] => [
  { title: w`Error at the last check`, share: 1.5, align: 'right' },
  { title: w`U`, share: 0.8, align: 'right' },
];

const SORT_VERDICT: Readonly<Record<Sort, Verdict>> = {
  'still-in': 'ok',
  doubtful: 'not-decidable',
  out: 'not-ok',
};

const decisionsAre = () =>
  w`Recall: the vehicle is called back; open until it is redone. Inform: its owner was told. Accept: left as it is. Redone: done again in a later job.`;

function vehiclesPart(items: readonly ItemState[]): Part {
  return {
    kind: 'table',
    title: w`Vehicles to decide about`,
    note: items.length === 0 ? w`None: every proof holds with the errors found.` : decisionsAre(),
    columns: [
      { title: w`Job`, share: 1.4, heads: true },
      { title: w`Day`, share: 1.3 },
      { title: w`VIN`, share: 2.4 },
      { title: w`Plate, fleet number`, share: 1.6 },
      { title: w`Worst`, share: 1.7 },
      { title: w`Cylinders out`, share: 1.2 },
      { title: w`Cylinders doubtful`, share: 1.3 },
      { title: w`Decision`, share: 1.8 },
    ],
    rows: [...items]
      .sort(byGravity)
      .map((item): Cell[] => [
        { text: item.job },
        { text: item.on },
        { text: item.vin ?? w`not given` },
        { text: [item.plate, item.fleet].filter((one) => one !== null).join(', ') || w`not given` },
        { text: SORT_WORD[item.sort], verdict: SORT_VERDICT[item.sort], bold: true },
        { text: cylindersOf(item, 'out') },
        { text: cylindersOf(item, 'doubtful') },
        { text: standOf(item), bold: item.open },
      ]),
  };
}

const withBoth = () =>
  w`"Then" is the value at the plug as judged that day. "Now" takes the error found off the reading, as if the tool had had it that day already. OUT, with both: beyond the limits either way. DOUBTFUL: too close to a limit to tell.`;

function proofsPart(items: readonly ItemState[]): readonly Part[] {
  if (items.length === 0) return [];
  return [
    {
      kind: 'table',
      title: w`Proofs that do not hold any more`,
      note: withBoth(),
      columns: [
        { title: w`Job`, share: 1.6, heads: true },
        { title: w`Cylinder`, share: 0.9, align: 'right' },
        { title: w`Attempt`, share: 1.3 },
        { title: w`Then`, share: 1, align: 'right' },
        { title: w`Now`, share: 1, align: 'right' },
        { title: w`U`, share: 0.8, align: 'right' },
        { title: w`Limits`, share: 2 },
        { title: w`Finding`, share: 2.2 },
      ],
      rows: [...items].sort(byGravity).flatMap((item) =>
        item.attempts.map((one): Cell[] => {
          const unit: Unit = one.quantity === 'torque' ? 'N.m' : 'mm';
          return [
            { text: item.job },
            { text: String(one.cylinder) },
            { text: one.quantity === 'torque' ? w`pull ${one.number}` : w`gap ${one.number}` },
            { text: one.was === null ? w`not judged` : figure(one.was, unit) },
            { text: figure(one.value, unit), bold: true },
            { text: figure(one.expanded, unit) },
            {
              text: w`${shownLimit(one.lowerLimit, unit, 'lower')} to ${shownLimit(one.upperLimit, unit, 'upper')} ${UNIT_TEXT[unit]}`,
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
      title: w`Decisions`,
      note: '',
      columns: [
        { title: w`When`, share: 2.3, heads: true },
        { title: w`Job`, share: 1.5 },
        { title: w`Decision`, share: 1.6 },
        { title: w`Why`, share: 4 },
        { title: w`By`, share: 1.6 },
      ],
      rows: decisions.map(({ at, job, words, because, by }) =>
        [utc(at), job, words, because, by].map((text) => ({ text })),
      ),
    },
  ];
}

const signed = (value: number, unit: Unit) => `${value > 0 ? '+' : ''}${figure(value, unit)}`;
