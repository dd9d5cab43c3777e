/** The file on one claim about one vehicle: each job as it was on its day, and what has been learned since. */

import { type JobOfVehicle, type Learned, learnedSince } from '../audit/dispute.ts';
import type { ImpactAssessment } from '../audit/impact-state.ts';
import type { StationEntry } from '../evidence/log.ts';
import { byName } from '../evidence/writers.ts';
import { marksOf } from '../job/proof.ts';
import { phrases, w } from '../words/catalogue.ts';
import { endOf, knownThen, proofs, toolRow } from './dispute-day.ts';
import { jobListTitle, learnedCells } from './dispute-since.ts';
import { exceptionRows } from './exceptions.ts';
import { utc } from './figures.ts';
import { jobsText } from './impact.ts';
import type { Paper, Part } from './paper.ts';

export interface DisputeInput {
  readonly claim: string;
  /** In the order of time; at least one. */
  readonly jobs: readonly JobOfVehicle[];
  readonly station: {
    readonly name: string;
    readonly entries: readonly StationEntry[];
    readonly impacts: readonly ImpactAssessment[];
  };
  /** Size and root of the log that the folder's checkpoint signs. */
  readonly log: { readonly size: number; readonly root: string };
  readonly program: string;
  /** ISO time. */
  readonly madeAt: string;
}

export function disputePaper(input: DisputeInput): Paper {
  const { claim, jobs, station, log, program, madeAt } = input;
  const vehicle = Object.assign({}, ...jobs.map(({ state }) => state.order.vehicle));
  const reviewed = jobs.map((job, at) => ({
    ...job,
    learned: learnedSince(job, station.entries, station.impacts, jobs.slice(at + 1)),
  }));
  const invented = jobs.some(({ state }) => state.order.specification.source.kind === 'invented-example');
  return {
    title: w`File on a claim`,
    subtitle: w`Claim ${claim}`,
    status: outcome(reviewed),
    marks: marksOf(jobs.flatMap(({ state }) => state.sources)),
    facts: [
      { label: w`Vehicle`, value: vehicle.description ?? w`not given` },
      { label: w`VIN`, value: vehicle.vin ?? w`not given` },
      { label: w`Plate`, value: vehicle.plate ?? w`not given` },
      { label: w`Fleet number`, value: vehicle.fleet ?? w`not given` },
      { label: w`Station`, value: station.name },
      { label: w`Made`, value: utc(madeAt) },
      { label: w`Jobs`, value: jobs.map(({ state }) => state.order.job).join(', ') },
      { label: w`Signed log`, value: w`${log.size} entries, root ${log.root.slice(0, 32)}...` },
    ],
    parts: [
      {
        kind: 'text',
        title: w`How to read it`,
        paragraphs: invented ? [inventedText(), ...READING] : READING,
      },
      ...(jobs.length > 1 ? [jobList(jobs)] : []),
      ...reviewed.flatMap((job) => jobParts(job, station.entries)),
    ],
    footer: w`Claim ${claim}`,
    program,
    madeAt,
  };
}

const inventedText = () =>
  w`INVENTED SPECIFICATION: the figures of at least one of these jobs are an example of no real engine.`;

const READING: readonly string[] = phrases([
  'Each job is shown as it was on its day: the figures in force then with their source, the tools with the calibration in force then, and what they proved. After it follows what has been learned since. Nothing learned later has changed the record of the day.',
  'The signed records are in the same folder, with an index of every file. You can check them without the shop: plugmark verify FOLDER --trust YOUR-LIST.json. The records are the evidence; these pages only show what they hold.',
  "A torque reading proves torque, not clamp force, sealing or the state of the threads. The vehicle maker's service information decides every figure.",
]);

function jobList(jobs: readonly JobOfVehicle[]): Part {
  return {
    kind: 'table',
    title: jobListTitle(),
    note: w`A later job may have changed the plugs of an earlier one.`,
    columns: [
      { title: w`Job`, share: 2, heads: true },
      { title: w`Opened`, share: 2 },
      { title: w`Ended`, share: 4 },
      { title: w`Technician`, share: 2 },
    ],
    rows: jobs.map(({ state, entries }) => [
      { text: state.order.job },
      { text: utc(entries[0]?.at ?? '') },
      { text: endOf(state, byName(entries)) },
      { text: state.technician },
    ]),
  };
}

interface ReviewedJob extends JobOfVehicle {
  readonly learned: readonly Learned[];
}

function outcome(jobs: readonly ReviewedJob[]): Paper['status'] {
  const isProven = ({ state }: ReviewedJob) =>
    state.closed?.complete === true && state.voided === null && marksOf(state.sources).length === 0;
  const touched = jobs.filter(({ learned }) => learned.some(({ kind }) => kind === 'touched'));
  const unproven = jobs.filter((job) => !isProven(job));
  const word =
    touched.length > 0 ? w`PROOFS IN QUESTION` : unproven.length > 0 ? w`NOT ALL PROVEN` : w`ALL PROOFS HOLD`;
  const counts = w`${jobsText(jobs.length)} on this vehicle: ${jobs.length - unproven.length} complete and proven, ${unproven.length} not`;
  const text =
    touched.length === 0 ? `${counts}.` : w`${counts}; impact assessments put ${touched.length} in question.`;
  return { word, text };
}

function jobParts(job: ReviewedJob, station: readonly StationEntry[]): readonly Part[] {
  const { state, learned } = job;
  const entries = byName(job.entries);
  const name = w`Job ${state.order.job}`;
  const exceptions = exceptionRows(state, entries);
  return [
    {
      kind: 'facts',
      title: w`${name}, ${state.basis.on}: what was known then`,
      facts: knownThen(state, entries, station),
    },
    {
      kind: 'table',
      title: w`${name}: tools and their calibration in force that day`,
      note: '',
      columns: [
        { title: w`Tool`, share: 1, heads: true },
        { title: w`Serial`, share: 1.4 },
        { title: w`Rests on`, share: 4.2 },
        { title: w`In force that day`, share: 3 },
      ],
      rows: state.instruments.map((instrument) => toolRow(instrument, state, entries)),
    },
    proofs(name, state),
    {
      kind: 'table',
      title: w`${name}: out of the ordinary`,
      note: exceptions.length === 0 ? w`Nothing.` : '',
      columns: [
        { title: w`When`, share: 1.6, heads: true },
        { title: w`What`, share: 6 },
        { title: w`Who`, share: 1.4 },
      ],
      rows: exceptions.map(({ at, what, who }) => [{ text: at }, { text: what }, { text: who }]),
    },
    {
      kind: 'table',
      title: w`${name}: what has been learned since`,
      note: learned.length === 0 ? w`Nothing.` : '',
      columns: [
        { title: w`When`, share: 1.6, heads: true },
        { title: w`What`, share: 7.4 },
      ],
      rows: learnedCells(learned),
    },
  ];
}
