/** A impact assessment for people: the words for where it stands, and the paper that an auditor reads. */
import type { Sort } from '../audit/impact.ts';
import { type FoundPoint, foundPoints } from '../audit/impact-span.ts';
import type { Decided, ImpactAssessment, ItemState } from '../audit/impact-state.ts';
import type { ImpactItem } from '../evidence/station-event.ts';
import { figure, UNIT_TEXT, type Unit, utc } from './figures.ts';
import type { Paper, Part } from './paper.ts';
import type { Cell, Column } from './table.ts';
import type { Verdict } from './verdict.ts';

/** What the paper says beside what the log tells. */
export interface ImpactContext {
  /** Size and root of the log, as a checkpoint signed it. */
  readonly log: { readonly size: number; readonly root: string };
  readonly program: string;
}

export const SORT_WORD: Readonly<Record<Sort, string>> = {
  'still-in': 'STILL IN',
  doubtful: 'DOUBTFUL',
  out: 'OUT',
};
const SORT_VERDICT: Readonly<Record<Sort, Verdict>> = {
  'still-in': 'ok',
  doubtful: 'not-decidable',
  out: 'not-ok',
};

/** A decision in the word of the command that made it. */
export const decisionWords = ({ decision, redoneIn }: Decided): string =>
  redoneIn === null ? decision : `${decision} in ${redoneIn}`;

/** What the words stand for, as the command, the paper and the lists use them. */
const DECISIONS_ARE =
  'recall: the vehicle is called back, and stays open until it is redone; inform: its owner was told; accept: left as it is; redone: done again by a later job';

/** Where a job of an impact assessment stands, in words. */
export function standOf({ decided, open }: ItemState): string {
  const last = decided.at(-1);
  if (last === undefined) return 'NOT DECIDED';
  return open ? 'RECALL, not redone yet' : decisionWords(last);
}

type NotHolding = ImpactItem['attempts'][number];

/** How a proof came out; the first judgement is not the last word on one that lay beyond the limits with either error. */
export function sortWords({ sort, covered, was, lowerLimit, upperLimit }: NotHolding): string {
  const beyond = was !== null && (was < lowerLimit || was > upperLimit);
  const both = sort === 'out' && beyond ? ', with both' : '';
  return `${SORT_WORD[sort]}${both}${covered ? '' : ', beyond the points looked at'}`;
}

/** Where the attempts went of which no proof is counted. */
export function proofWords({ attempts, stillIn, doubtful, out }: ImpactAssessment['made']): string {
  const proofs = stillIn + doubtful + out;
  const others = attempts - proofs;
  const rest =
    others === 0
      ? ''
      : ` The other ${others} prove nothing: not OK then, done again since, or of a void job.`;
  return `${counted(attempts, 'attempt')}, ${counted(proofs, 'proof')}: ${PROOF_IS}.${rest}`;
}

const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`;

const PROOF_IS =
  'a proof is the last attempt on each plug that was OK, or what in truth went above the window behind it';

/** The headline of an impact assessment: a word, and a sentence with its counts. */
export function outcomeOf({ made, items, closed }: ImpactAssessment): {
  readonly word: string;
  readonly text: string;
} {
  const proofs = made.stillIn + made.doubtful + made.out;
  const open = items.filter((item) => item.open).length;
  const word =
    made.out > 0 ? 'PROOFS DO NOT HOLD' : made.doubtful > 0 ? 'PROOFS IN DOUBT' : 'ALL PROOFS HOLD';
  const counts = `Of ${proofs} proofs ${made.stillIn} still in, ${made.doubtful} doubtful, ${made.out} out; ${items.length} ${items.length === 1 ? 'job' : 'jobs'} touched, ${open} open.`;
  const end = closed === null ? ' Not closed.' : ` Closed on ${closed.at.slice(0, 10)} by ${closed.by}.`;
  return { word, text: counts + end };
}

export function impactPaper(impact: ImpactAssessment, { log, program }: ImpactContext): Paper {
  const { assessment, made, at, by, asFound, items, closed } = impact;
  const unit: Unit = asFound?.unit ?? 'N.m';
  const lastGood =
    made.lastGood === null ? 'none in this log' : `${made.lastGood.number} of ${made.lastGood.date}`;
  return {
    title: 'Impact assessment on a measuring tool',
    subtitle: `${assessment}: ${made.tool}, serial ${made.serial}`,
    status: outcomeOf(impact),
    simulated: made.simulated,
    facts: [
      { label: 'Tool', value: `${made.tool}, serial ${made.serial}` },
      {
        label: 'Found',
        value: `${made.asFound}, ${asFound?.laboratory ?? 'laboratory not known'}, ${made.foundOn}`,
      },
      { label: 'Last good check', value: lastGood },
      { label: 'Looked at', value: `${made.attempts} attempts from ${made.from} to ${made.to}` },
      { label: 'Assessed', value: `${utc(at)} by ${by}` },
      {
        label: 'Closed',
        value: closed === null ? 'no' : `${utc(closed.at)} by ${closed.by}: ${closed.because}`,
      },
      { label: 'Signed log', value: `${log.size} entries, root ${log.root.slice(0, 32)}...` },
      { label: 'As-found SHA-256', value: made.digest },
    ],
    parts: [
      { kind: 'text', title: 'Why, and how', paragraphs: [...WHY, proofWords(made)] },
      foundPart(impact, unit),
      vehiclesPart(items),
      proofsPart(items),
      ...decisionsPart(items),
    ],
    footer: `Impact assessment ${assessment} · ${made.serial}`,
    program,
    madeAt:
      closed?.at ??
      items
        .flatMap(({ decided }) => decided.map((one) => one.at))
        .sort()
        .at(-1) ??
      at,
  };
}

const WHY = [
  'A tool that was out of tolerance at calibration puts earlier results in question: ISO 9001:2015, 7.1.5.2 asks whether they are affected and that something is done; IATF 16949, 7.1.5.2.1 asks for a record of what was found, of the risk to what was delivered, and of the notice to the customer where suspect work went out.',
  'Every attempt since the last good check was judged again, by the same rules that judged it then: the error that was found was taken off its reading, and the uncertainty of finding it took the place of the old one. STILL IN is proven within the limits; DOUBTFUL too near a limit to tell, or beyond the points that were looked at; OUT beyond the limits if the tool had the found error already then; "with both" says that the value of then lay beyond them too.',
  'When between the two checks the tool moved, nobody knows. What is OK with the old error and with the new one is OK with every error between them. What was judged then stays in the log as it is; this impact assessment was added to it.',
] as const;

const FINDING_WORD: Readonly<Record<FoundPoint['finding'], string>> = {
  moved: 'MOVED, by more than the uncertainty of both',
  'not-moved': 'not moved that can be told',
  unknown: 'nothing to compare with',
};

function foundPart({ asFound, lastGood }: ImpactAssessment, unit: Unit): Part {
  const rows = asFound === null ? [] : foundPoints(asFound, lastGood);
  const then = lastGood === null ? '' : `, beside what ${lastGood.number} of ${lastGood.date} said there`;
  return {
    kind: 'table',
    title: 'What was found',
    note: `In ${UNIT_TEXT[unit]}, U at 95 %${then}.`,
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

/** What is proven wrong first. */
export const byGravity = (a: ItemState, b: ItemState) => Number(b.sort === 'out') - Number(a.sort === 'out');

export const cylindersOf = ({ attempts }: ItemState, sort: Exclude<Sort, 'still-in'>) =>
  [...new Set(attempts.filter((one) => one.sort === sort).map(({ cylinder }) => cylinder))]
    .sort((a, b) => a - b)
    .join(', ');

function vehiclesPart(items: readonly ItemState[]): Part {
  const columns: Column[] = [
    { title: 'Job', share: 1.4, heads: true },
    { title: 'Day', share: 1.3 },
    { title: 'VIN', share: 2.4 },
    { title: 'Plate, fleet number', share: 1.6 },
    { title: 'Worst', share: 1.7 },
    { title: 'Cylinders out', share: 1.2 },
    { title: 'Cylinders doubtful', share: 1.3 },
    { title: 'Stands', share: 1.8 },
  ];
  return {
    kind: 'table',
    title: 'Vehicles to decide about',
    note:
      items.length === 0
        ? 'None: every proof holds with the errors that were found.'
        : `What is decided, ${DECISIONS_ARE}. Who decided stands below.`,
    columns,
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

function proofsPart(items: readonly ItemState[]): Part {
  return {
    kind: 'table',
    title: 'Proofs that do not hold any more',
    note:
      items.length === 0
        ? 'None.'
        : 'Value at the plug as judged then, and with the found error taken off, as if the tool had had it already.',
    columns: [
      { title: 'Job', share: 1.6, heads: true },
      { title: 'Cylinder', share: 0.8, align: 'right' },
      { title: 'Pull or reading', share: 1.4 },
      { title: 'Then', share: 1, align: 'right' },
      { title: 'With the error', share: 1.2, align: 'right' },
      { title: 'U', share: 0.8, align: 'right' },
      { title: 'Limits', share: 1.8 },
      { title: 'Finding', share: 2.2 },
    ],
    rows: [...items].sort(byGravity).flatMap((item) =>
      item.attempts.map((one): Cell[] => {
        const unit: Unit = one.quantity === 'torque' ? 'N.m' : 'mm';
        return [
          { text: item.job },
          { text: String(one.cylinder) },
          { text: `${one.quantity === 'torque' ? 'pull' : 'gap reading'} ${one.number}` },
          { text: one.was === null ? 'not judged' : figure(one.was, unit) },
          { text: figure(one.value, unit), bold: true },
          { text: figure(one.expanded, unit) },
          { text: `${figure(one.lowerLimit, unit)} to ${figure(one.upperLimit, unit)} ${UNIT_TEXT[unit]}` },
          { text: sortWords(one), verdict: SORT_VERDICT[one.sort] },
        ];
      }),
    ),
  };
}

function decisionsPart(items: readonly ItemState[]): readonly Part[] {
  const rows = items.flatMap(({ job, decided }) =>
    decided.map((one) => ({ job, ...one, decision: decisionWords(one) })),
  );
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      title: 'What was decided',
      note: '',
      columns: [
        { title: 'When', share: 2.3, heads: true },
        { title: 'Job', share: 1.5 },
        { title: 'Decision', share: 1.6 },
        { title: 'Why', share: 4 },
        { title: 'By', share: 1.6 },
      ],
      rows: rows
        .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
        .map(({ at, job, decision, because, by }) => [
          { text: utc(at) },
          { text: job },
          { text: decision },
          { text: because },
          { text: by },
        ]),
    },
  ];
}

const signed = (value: number, unit: Unit) => `${value > 0 ? '+' : ''}${figure(value, unit)}`;
