/** The file of one claim about one vehicle: each job with what was known on its day, and what has been learned since. */
import { type JobOfVehicle, type Learned, learnedSince, recordedOn } from '../audit/dispute.ts';
import type { ImpactAssessment } from '../audit/impact-state.ts';
import type { LogEntry, StationEntry } from '../evidence/log.ts';
import { byName } from '../evidence/writers.ts';
import { dueDate } from '../instrument/fitness.ts';
import type { Instrument } from '../instrument/instrument.ts';
import { notesOnJob } from '../job/open.ts';
import type { CylinderState, JobState } from '../job/state.ts';
import type { Judgement } from '../metrology/judgement.ts';
import { exceptionRows } from './exceptions.ts';
import { figure, percent, UNIT_TEXT, type Unit, utc } from './figures.ts';
import { decisionWords, sortWords } from './impact.ts';
import type { Paper, Part } from './paper.ts';
import type { Cell } from './table.ts';
import { cylinderVerdict, VERDICT_WORD, verdictOf } from './verdict.ts';
import { windowText } from './window-text.ts';

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
  const told = jobs.map((job, at) => ({
    ...job,
    learned: learnedSince(job, station.entries, station.impacts, jobs.slice(at + 1)),
  }));
  const invented = jobs.some(({ state }) => state.order.specification.source.kind === 'invented-example');
  return {
    title: 'File on a claim',
    subtitle: `Claim ${claim}`,
    status: outcome(told),
    simulated: jobs.some(({ state }) => state.simulated),
    facts: [
      { label: 'Vehicle', value: vehicle.description ?? NOT_GIVEN },
      { label: 'VIN', value: vehicle.vin ?? NOT_GIVEN },
      { label: 'Plate', value: vehicle.plate ?? NOT_GIVEN },
      { label: 'Fleet number', value: vehicle.fleet ?? NOT_GIVEN },
      { label: 'Station', value: station.name },
      { label: 'Made', value: utc(madeAt) },
      { label: 'Jobs', value: jobs.map(({ state }) => state.order.job).join(', ') },
      { label: 'Signed log', value: `${log.size} entries, root ${log.root.slice(0, 32)}...` },
    ],
    parts: [
      { kind: 'text', title: 'How to read it', paragraphs: invented ? [INVENTED, ...READING] : READING },
      ...(jobs.length > 1 ? [jobList(jobs)] : []),
      ...told.flatMap((job) => jobParts(job, station.entries)),
    ],
    footer: `Claim ${claim}`,
    program,
    madeAt,
  };
}

const NOT_GIVEN = 'not given';

const INVENTED =
  'INVENTED SPECIFICATION: the figures of at least one of these jobs are an example and belong to no real engine.';

const READING = [
  'Each job stands here as it was on its day: the figures that were in force then with their source, the tools with the calibration in force then, and what they proved. Behind it stands what has been learned since. Nothing of the day was changed by what was learned later.',
  'The signed records lie beside these pages, with an index that names every file. They can be checked without asking the shop: plugmark verify FOLDER --trust YOUR-LIST.json. The records are the evidence; these pages are a reading of them.',
  "A torque reading proves torque, not clamp force, sealing or the state of the threads. The vehicle maker's service information decides every figure.",
] as const;

/** Said once: under each job stands only that the vehicle came again. */
const JOB_LIST = 'The jobs on this vehicle';

function jobList(jobs: readonly JobOfVehicle[]): Part {
  return {
    kind: 'table',
    title: JOB_LIST,
    note: 'A later job may have changed the plugs of an earlier one.',
    columns: [
      { title: 'Job', share: 2, heads: true },
      { title: 'Opened', share: 2 },
      { title: 'Ended', share: 4 },
      { title: 'Technician', share: 2 },
    ],
    rows: jobs.map(({ state, entries }) => [
      { text: state.order.job },
      { text: utc(entries[0]?.at ?? '') },
      { text: endOf(state, byName(entries)) },
      { text: state.technician },
    ]),
  };
}

interface ToldJob extends JobOfVehicle {
  readonly learned: readonly Learned[];
}

function outcome(jobs: readonly ToldJob[]): Paper['status'] {
  const isComplete = ({ state }: ToldJob) => state.closed?.complete === true && state.voided === null;
  const touched = jobs.filter(({ learned }) => learned.some(({ kind }) => kind === 'touched'));
  const unproven = jobs.filter((job) => !isComplete(job));
  const word =
    touched.length > 0 ? 'PROOFS IN QUESTION' : unproven.length > 0 ? 'NOT ALL PROVEN' : 'ALL PROOFS STAND';
  const text = `${jobs.length} ${jobs.length === 1 ? 'job' : 'jobs'} on this vehicle: ${jobs.length - unproven.length} complete, ${unproven.length} not; an impact assessment puts proofs of ${touched.length} in question.`;
  return { word, text };
}

function jobParts(job: ToldJob, station: readonly StationEntry[]): readonly Part[] {
  const { state, learned } = job;
  const entries = byName(job.entries);
  const name = `Job ${state.order.job}`;
  const exceptions = exceptionRows(state, entries);
  return [
    {
      kind: 'facts',
      title: `${name}, ${state.basis.on}: what was known then`,
      facts: knownThen(state, entries, station),
    },
    {
      kind: 'table',
      title: `${name}: tools and their calibration in force that day`,
      note: '',
      columns: [
        { title: 'Tool', share: 1, heads: true },
        { title: 'Serial', share: 1.4 },
        { title: 'Rests on', share: 4.2 },
        { title: 'In force that day', share: 3 },
      ],
      rows: state.instruments.map((instrument) => toolRow(instrument, state, entries)),
    },
    proofs(name, state),
    {
      kind: 'table',
      title: `${name}: out of the ordinary`,
      note: exceptions.length === 0 ? 'Nothing.' : '',
      columns: [
        { title: 'When', share: 1.6, heads: true },
        { title: 'What', share: 6 },
        { title: 'Who', share: 1.4 },
      ],
      rows: exceptions.map(({ at, what, who }) => [{ text: at }, { text: what }, { text: who }]),
    },
    {
      kind: 'table',
      title: `${name}: what has been learned since`,
      note: learned.length === 0 ? 'Nothing.' : '',
      columns: [
        { title: 'When', share: 1.6, heads: true },
        { title: 'What', share: 7.4 },
      ],
      rows: againOnce(learned).flatMap(learnedRows),
    },
  ];
}

function knownThen(state: JobState, entries: readonly LogEntry[], station: readonly StationEntry[]) {
  const { order, torqueWindow, gapWindow } = state;
  const { specification, vehicle, complaint } = order;
  const { source } = specification;
  const recorded = recordedOn(state, station);
  const torque = windowText(torqueWindow);
  return [
    { label: 'Complaint', value: complaint ?? NOT_GIVEN },
    { label: 'Odometer', value: vehicle.odometerKm === undefined ? NOT_GIVEN : `${vehicle.odometerKm} km` },
    { label: 'Technician', value: state.technician },
    { label: 'Opened', value: utc(entries[0]?.at ?? '') },
    { label: 'Ended', value: endOf(state, entries) },
    { label: 'Plug', value: `${order.plug.part}, ${order.plug.thread}, ${order.plug.seat} seat` },
    { label: 'Torque as printed', value: `${specification.torque}, threads ${specification.threads}` },
    { label: 'Gap as printed', value: specification.gap ?? 'none' },
    {
      label: 'Source',
      value: [source.title, source.edition, source.date].filter((one) => one !== undefined).join(', '),
    },
    { label: 'In the log since', value: recorded === null ? 'never' : utc(recorded) },
    { label: 'Torque accepted', value: `${torque.acceptance}, of ${torque.limits}` },
    { label: 'Gap accepted', value: gapWindow === null ? 'not measured' : windowText(gapWindow).acceptance },
    { label: 'Notes of the day', value: notesOnJob(state).join(' ') || 'none' },
  ];
}

function endOf(state: JobState, entries: readonly LogEntry[]): string {
  const closing = entries.findLast(({ event }) => event.type === 'job-closed');
  if (closing === undefined) return 'still open';
  const complete = state.closed?.complete === true ? 'complete' : 'NOT COMPLETE';
  return `${complete}, ${utc(closing.at)} by ${closing.by}`;
}

function toolRow(instrument: Instrument, { basis }: JobState, entries: readonly LogEntry[]): readonly Cell[] {
  const { id, serial, certificate } = instrument;
  const due = dueDate(instrument);
  const rests =
    certificate === undefined
      ? `${instrument.basis}; no certificate`
      : `certificate ${certificate.number}, ${certificate.laboratory}, ${certificate.date}`;
  const answered = entries.flatMap(({ event }) =>
    event.type === 'instrument-overridden' && event.tool === id ? [event] : [],
  );
  const inForce =
    certificate === undefined
      ? 'nothing that runs out'
      : due === null
        ? 'yes; no due date was set'
        : due >= basis.on
          ? `yes, until ${due}`
          : `NO, it ran out on ${due}`;
  const by = answered.map(
    ({ by: who, refusal, reason }) => `; ${who} answered for it (${refusal}): ${reason}`,
  );
  return [{ text: id }, { text: serial ?? NOT_GIVEN }, { text: rests }, { text: inForce + by.join('') }];
}

function proofs(name: string, state: JobState): Part {
  return {
    kind: 'table',
    title: `${name}: what was proven`,
    note: '',
    columns: [
      { title: 'Cylinder', share: 0.8, align: 'right', heads: true },
      { title: 'Verdict', share: 1.7 },
      { title: 'Gap', share: 2 },
      { title: 'Torque', share: 2.2 },
      { title: 'Probability', share: 1.1, align: 'right' },
      { title: 'Tries', share: 1.2 },
    ],
    rows: [...state.cylinders]
      .sort((a, b) => a.cylinder - b.cylinder)
      .map((cylinder) => {
        const verdict = cylinderVerdict(cylinder);
        const torque = standing(cylinder.torque, cylinder.pulls);
        return [
          { text: String(cylinder.cylinder) },
          { text: VERDICT_WORD[verdict], verdict, bold: true },
          { text: judged(standing(cylinder.gap, cylinder.gaps), 'mm') },
          { text: judged(torque, 'N.m') },
          { text: torque === null ? '' : percent(torque.conformanceProbability) },
          { text: `${cylinder.gaps.length} gap, ${cylinder.pulls.length} pull` },
        ];
      }),
  };
}

/** The figures that stand: of the last OK once done, else of the last attempt that was judged. */
function standing(
  step: CylinderState['gap'],
  attempts: readonly { readonly judgement: Judgement | null }[],
): Judgement | null {
  const all = attempts.flatMap(({ judgement }) => (judgement === null ? [] : [judgement]));
  return (step === 'done' ? all.findLast(({ result }) => result === 'OK') : all.at(-1)) ?? null;
}

function judged(judgement: Judgement | null, unit: Unit): string {
  if (judgement === null) return 'none';
  const { value, expandedUncertainty } = judgement;
  const word = VERDICT_WORD[verdictOf(judgement)];
  return `${figure(value, unit)} ± ${figure(expandedUncertainty, unit)} ${UNIT_TEXT[unit]} ${word}`;
}

type Row = Exclude<Learned, { kind: 'worked-again' }> | Again;
type Again = Extract<Learned, { kind: 'worked-again' }> & { readonly more: number };

/** Of the jobs that came later the first one, which is where this one's plugs may have gone, and how many followed. */
function againOnce(learned: readonly Learned[]): readonly Row[] {
  const more = learned.filter(({ kind }) => kind === 'worked-again').length - 1;
  let isFirst = true;
  return learned.flatMap((one): Row[] => {
    if (one.kind !== 'worked-again') return [one];
    const told = isFirst ? [{ ...one, more }] : [];
    isFirst = false;
    return told;
  });
}

function learnedRows(one: Row): readonly (readonly Cell[])[] {
  const row = (what: string, bold = false): readonly Cell[] => [{ text: utc(one.at) }, { text: what, bold }];
  switch (one.kind) {
    case 'checked':
      return [
        row(`${one.tool} (${one.serial}) was calibrated again: certificate ${one.number} of ${one.date}.`),
      ];
    case 'worked-again':
      return [
        row(
          `Job ${one.job} was opened on the same vehicle${one.complete ? ', and closed complete' : ''}${one.more === 0 ? '' : `; ${one.more} more followed, see "${JOB_LIST}"`}.`,
        ),
      ];
    case 'voided':
      return [row(`The job was declared void by ${one.by}: ${one.reason}`, true)];
    case 'stood': {
      const { assessment, assessed } = one.impact;
      const found = `Impact assessment ${assessment}: ${assessed.tool} (${assessed.serial}) was out of tolerance on ${assessed.foundOn}.`;
      const stood =
        one.proofs === 0
          ? 'It had proved nothing in this job that could be in question.'
          : `Judged again with what was found, every proof of this job still holds (${one.proofs} by this tool).`;
      return [row(`${found} ${stood}`)];
    }
    case 'touched': {
      const { assessment, assessed } = one.impact;
      const which = one.item.attempts.map(
        (found) =>
          `cylinder ${found.cylinder} ${figure(found.value, unitOf(found.quantity))} ± ${figure(found.expanded, unitOf(found.quantity))} ${UNIT_TEXT[unitOf(found.quantity)]} ${sortWords(found)}`,
      );
      const decided = one.item.decided.map((decision): readonly Cell[] => [
        { text: utc(decision.at) },
        {
          text: `Impact assessment ${assessment}, decided by ${decision.by}: ${decisionWords(decision)}. ${decision.because}`,
        },
      ]);
      return [
        row(
          `Impact assessment ${assessment}: ${assessed.tool} (${assessed.serial}) was out of tolerance on ${assessed.foundOn} (${assessed.asFound}). Judged again with what was found: ${which.join('; ')}.`,
          true,
        ),
        ...(decided.length === 0
          ? [row(`Impact assessment ${assessment}: nothing was decided about this job yet.`, true)]
          : decided),
      ];
    }
  }
}

const unitOf = (quantity: 'torque' | 'length'): Unit => (quantity === 'torque' ? 'N.m' : 'mm');
