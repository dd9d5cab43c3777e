import { readCheckpoint } from '../evidence/checkpoint.ts';
import type { LogEntry } from '../evidence/log.ts';
import { toHex } from '../evidence/platform/bytes.ts';
import { byName } from '../evidence/writers.ts';
import type { Basis } from '../job/basis.ts';
import { isByAngle } from '../job/click.ts';
import { outOfOrderIn, standsOutOfOrder } from '../job/early.ts';
import { technicianOf } from '../job/hand-over.ts';
import { type Mark, marksOf, proofOf } from '../job/proof.ts';
import { editionIn, OPEN_EDITION } from '../job/rules.ts';
import type { CylinderState, JobState } from '../job/state.ts';
import { withoutPhoneNumbers } from '../personal.ts';
import { type Adapter, crowfootOf, leverage } from '../plug/geometry.ts';
import { shopPercent } from '../plug/tightening.ts';
import { SI, shownUnits } from '../quantity/shown.ts';
import { fixed, phrases, spokenLanguage, w } from '../words/catalogue.ts';
import { atPlug } from './at-plug.ts';
import { type AttemptRow, attemptRows, type CylinderRow, unmeasuredRows } from './attempts.ts';
import { around, type ChecklistEvent } from './checklist.ts';
import { clean } from './clean.ts';
import { type CustomerSheet, customerSheet } from './customer-sheet.ts';
import { type ExceptionRow, exceptionRows } from './exceptions.ts';
import type { Fact } from './fact.ts';
import { utc } from './figures.ts';
import { type InstrumentRow, instrumentRows } from './instruments.ts';
import { type CylinderPlot, cylinderPlots, type Trace } from './plots.ts';
import { FLEX_JOINT_WORDS, GASKET_WORDS, SEAT_WORDS, THREADS_WORDS } from './plug-words.ts';
import { type Positions, positionsOf } from './positions.ts';
import { statements } from './statements.ts';
import { cylinderVerdict, type Verdict } from './verdict.ts';
import { type WindowText, windowText } from './window-text.ts';
import { marksText, outOfOrderCaveat, proofText } from './words/index.ts';

/** All that the record for people is made from. */
export interface ReportInput {
  readonly state: JobState;
  /** The job's own entries, in order, from `job-opened`. */
  readonly entries: readonly LogEntry[];
  /** Samples by number of pull; a pull without samples is shown as one. */
  readonly traces: ReadonlyMap<number, Trace>;
  /** Name of the station that sealed it. */
  readonly station: string;
  /** SHA-256 of an earlier record of this job that it replaces; null for none. */
  readonly replaces: string | null;
  /** SHA-256 that the record had before somebody countersigned it; null where nobody did. */
  readonly beforeSigning: string | null;
  /** SHA-256 of the signed record's bytes, 64 hexadecimal digits. */
  readonly recordDigest: string;
  /** Who signed, each with the RFC 7638 thumbprint of the key. */
  readonly signers: readonly { readonly role: string; readonly kid: string }[];
  /** How it stands with the technician's own signature, in words. */
  readonly technicianSignature: string;
  /** The signed checkpoint of the station log in the record. */
  readonly checkpoint: string;
  /** Name and version of the program, for example `plugmark 0.1.0`. */
  readonly program: string;
}

export interface PlacedCylinder {
  readonly cylinder: number;
  readonly verdict: Verdict;
}

/** The record as plain data: every text ready to print, in Unicode; nothing left to decide for PDF or CSV. */
export interface ReportModel {
  readonly job: string;
  readonly positions: Positions;
  readonly customer: CustomerSheet;
  /** Figures that prove nothing: then every page says so. */
  readonly marks: readonly Mark[];
  /** What a reader must know of the order of the work; empty where everything that counts was done in its turn. */
  readonly outOfOrder: string;
  /** What the figures are worth; empty where nothing is done, or the job is void. */
  readonly proof: string;
  readonly inventedSpecification: boolean;
  /** The shop's own tolerance for a torque that was printed as a single figure; null where the limits are the source's. */
  readonly shopPercent: number | null;
  readonly status: { readonly word: string; readonly text: string };
  readonly vehicle: { readonly vin: string; readonly plate: string; readonly description: string };
  readonly technician: string;
  readonly jobFacts: readonly Fact[];
  readonly specificationFacts: readonly Fact[];
  readonly banks: readonly (readonly PlacedCylinder[])[];
  /** Null where the gap is not measured. */
  readonly gapWindow: WindowText | null;
  /** The shop wants the grades of ILAC-G8 beside the verdicts. */
  readonly grades: boolean;
  readonly torqueWindow: WindowText;
  /** Of the turn from contact, where it is judged. */
  readonly turnLimits: NonNullable<Basis['turn']> | null;
  /** Of the first of two steps; null where there is one. */
  readonly firstTorqueWindow: WindowText | null;
  /** The plug sees another torque than the wrench shows. */
  readonly adapter: boolean;
  /** In service order. */
  readonly cylinders: readonly CylinderRow[];
  /** One row an attempt, strays and cylinders without any attempt included. */
  readonly rows: readonly AttemptRow[];
  readonly plots: readonly CylinderPlot[];
  readonly around: ChecklistEvent;
  readonly exceptions: readonly ExceptionRow[];
  readonly instruments: readonly InstrumentRow[];
  readonly cautions: readonly string[];
  readonly proves: readonly string[];
  readonly fingerprint: {
    readonly digest: string;
    /** Role and thumbprint. */
    readonly signers: readonly string[];
    readonly technician: string;
    /** What a reader must know who has another copy of these pages; empty for nothing. */
    readonly otherCopies: string;
    /** Size and root of the station log as it was signed. */
    readonly log: { readonly size: number; readonly root: string } | null;
  };
  readonly program: string;
  /** ISO time of the record's last entry; the only date that the document itself carries. */
  readonly madeAt: string;
}

/** The record for people as plain data. Throws when there are no entries, which is no job. */
export function reportModel(given: ReportInput): ReportModel {
  const input = atPlug(given);
  const { state } = input;
  const entries = byName(input.entries);
  const last = entries.at(-1);
  if (last === undefined) throw new RangeError('a report needs the entries of its job');
  const { vehicle, specification } = state.order;
  const cylinders = state.cylinders.map((cylinder) => cylinderRow(state, cylinder, entries));
  const strays = attemptRows(state, null, [], state.strays, entries);
  const verdicts = new Map(cylinders.map(({ cylinder, verdict }) => [cylinder, verdict]));
  const marks = marksOf(state.sources);
  const positions = positionsOf(state.order.engine);
  const first = state.basis.firstTorqueWindow;
  const early = outOfOrderIn(state);
  const worth = state.voided === null ? clean(proofText(proofOf(state))) : '';
  return {
    job: clean(state.order.job),
    positions,
    customer: customerSheet(state, entries, cylinders, input.station),
    marks,
    outOfOrder: outOfOrderCaveat(early),
    proof: worth === '' ? '' : `${worth}.`,
    inventedSpecification: specification.source.kind === 'invented-example',
    shopPercent: shopPercent(state.order.specification),
    status: statusOf(state, cylinders, marks, positions),
    vehicle: {
      vin: clean(vehicle.vin ?? ''),
      plate: clean(vehicle.plate ?? ''),
      description: clean(vehicle.description ?? ''),
    },
    technician: clean(technicianOf(entries.map(({ event }) => event)) ?? state.technician),
    jobFacts: jobFacts(state, entries),
    specificationFacts: specificationFacts(state),
    banks: state.order.engine.banks.map((bank) =>
      bank.map((cylinder) => ({ cylinder, verdict: verdicts.get(cylinder) ?? 'not-done' })),
    ),
    gapWindow: state.gapWindow && windowText(state.gapWindow),
    torqueWindow: windowText(state.torqueWindow),
    turnLimits: state.basis.turn ?? null,
    firstTorqueWindow: first && windowText(first),
    adapter: state.order.adapter !== undefined,
    grades: state.basis.decision.grades,
    cylinders,
    rows: [...cylinders.flatMap((c) => [...c.gaps, ...c.pulls, ...unmeasuredRows(c)]), ...strays],
    plots: cylinderPlots(state, input.traces),
    around: around(state, entries),
    exceptions: exceptionRows(state, entries),
    instruments: instrumentRows(state, entries),
    ...statements(state),
    fingerprint: {
      digest: input.recordDigest,
      signers: input.signers.map(({ role, kid }) => clean(`${role} ${kid}`)),
      technician: clean(input.technicianSignature),
      otherCopies: otherCopies(input),
      log: logText(input.checkpoint),
    },
    program: clean(input.program),
    madeAt: last.at,
  };
}

function logText(note: string): ReportModel['fingerprint']['log'] {
  const checkpoint = readCheckpoint(note, 'checkpoint');
  if (!checkpoint.ok) return null;
  return { size: checkpoint.value.size, root: toHex(checkpoint.value.root) };
}

function cylinderRow(state: JobState, c: CylinderState, entries: readonly LogEntry[]): CylinderRow {
  const rows = attemptRows(state, c.cylinder, c.gaps, c.pulls, entries);
  return {
    cylinder: c.cylinder,
    verdict: cylinderVerdict(c),
    gaps: rows.filter((row) => row.quantity === 'gap'),
    pulls: rows.filter((row) => row.quantity === 'torque'),
  };
}

function statusOf(
  state: JobState,
  cylinders: readonly CylinderRow[],
  marks: readonly Mark[],
  positions: Positions,
): ReportModel['status'] {
  const proven = cylinders.filter(({ verdict }) => verdict === 'ok').length;
  const count = w`${positions.counted(proven, cylinders.length)} OK`;
  const status = (word: string, rest: string) => ({
    word: marks.length === 0 ? word : `${marksText(marks)}: ${word}`,
    text: `${count}${rest}${otherRules(state)}`,
  });
  if (state.voided !== null)
    return status(w`VOID`, w`; the job was declared void by ${clean(state.voided.by)}.`);
  if (state.closed === null) return status(w`NOT CLOSED`, w`; the job was still open.`);
  const settled = cylinders.filter(({ verdict }) => verdict === 'accepted' || verdict === 'by-angle').length;
  const early = standsOutOfOrder(state).length > 0;
  if (!state.closed.complete || proven + settled < cylinders.length)
    return status(
      w`NOT COMPLETE`,
      w`; the job was closed with work open.` + (early ? ` ${earlyWork()}` : ''),
    );
  if (early)
    return status(settled > 0 ? w`OUT OF ORDER, NOT ALL PROVEN` : w`DONE OUT OF ORDER`, `. ${earlyWork()}`);
  if (settled > 0) return status(w`COMPLETE, NOT ALL PROVEN`, w`; see the exceptions.`);
  return status(w`COMPLETE`, '.');
}

const earlyWork = () => w`Work was done OUT OF ORDER; see the exceptions.`;

/** What this program cannot judge again it only repeats. */
const otherRules = ({ rules }: JobState) =>
  (editionIn(rules) ?? Number.POSITIVE_INFINITY) <= OPEN_EDITION
    ? ''
    : ` ${w`Judged by ${clean(rules)}, which this version does not know: shown as recorded, NOT judged again.`}`;

/** Those who worked on it beside whoever answers for the job. */
function othersAtWork({ cylinders }: JobState, entries: readonly LogEntry[]): readonly Fact[] {
  const answers = technicianOf(entries.map(({ event }) => event));
  const all = cylinders.flatMap(({ gaps, pulls }) => [...gaps, ...pulls].map(({ technician }) => technician));
  const others = [...new Set(all)].filter((name) => name !== answers);
  return others.length === 0 ? [] : [{ label: w`Also at work`, value: clean(others.join(', ')) }];
}

function jobFacts(state: JobState, entries: readonly LogEntry[]): Fact[] {
  const { vehicle, engine, plug } = state.order;
  const positions = positionsOf(engine);
  const closing = entries.findLast(({ event }) => event.type === 'job-closed' || event.type === 'job-voided');
  const fact = (label: string, value: string | undefined): Fact => ({
    label,
    value: clean(value ?? '') || w`not given`,
  });
  return [
    fact(w`Technician`, technicianOf(entries.map(({ event }) => event)) ?? state.technician),
    ...othersAtWork(state, entries),
    fact(w`Customer`, state.order.customer),
    fact(w`Vehicle`, vehicle.description),
    fact(w`VIN`, vehicle.vin),
    fact(w`Plate`, vehicle.plate),
    ...(vehicle.fleet === undefined ? [] : [fact(w`Fleet number`, vehicle.fleet)]),
    fact(w`Odometer`, vehicle.odometerKm === undefined ? undefined : `${vehicle.odometerKm} km`),
    ...(state.order.complaint === undefined
      ? []
      : [fact(w`Complaint`, withoutPhoneNumbers(state.order.complaint))]),
    fact(w`Engine`, engineText(engine)),
    fact(w`Plugs`, plugText(plug)),
    ...(positions.note === null ? [] : [fact(w`Numbers`, positions.note)]),
    fact(w`Opened`, utc(entries[0]?.at ?? '')),
    fact(w`Closed`, closing === undefined ? w`not closed` : w`${utc(closing.at)} by ${closing.by}`),
  ];
}

/** Another copy of these pages may have another fingerprint, though nothing in the job is different. */
function otherCopies({ replaces, beforeSigning }: ReportInput): string {
  const texts = [
    ...(replaces === null
      ? []
      : [
          w`The job was sealed again: these pages replace those of the record with the fingerprint ${replaces}.`,
        ]),
    ...(beforeSigning === null
      ? []
      : [w`The record was countersigned since: copies from before have the fingerprint ${beforeSigning}.`]),
  ];
  return [...texts, ...(texts.length === 0 || isUsual() ? [] : [inOtherWords()])].join(' ');
}

/** English, in N·m and mm. */
const isUsual = () =>
  spokenLanguage() === 'en' && shownUnits().torque === SI.torque && shownUnits().length === SI.length;

const inOtherWords = () =>
  w`Pages in another language or in other units are other papers of the same record, with the same fingerprint.`;

function engineText(engine: JobState['order']['engine']): string {
  const head = engine.headMaterial === 'aluminium' ? w`aluminium head` : w`cast-iron head`;
  const parts = [engine.description, positionsOf(engine).counted(engine.banks.flat().length), head];
  return parts.filter((part) => part !== undefined && part !== '').join(', ');
}

function plugText(plug: JobState['order']['plug']): string {
  const own = plug.parts?.map(({ part, cylinders }) => w`${part} in cylinder ${cylinders.join(', ')}`);
  const parts = [own === undefined ? plug.part : own.join('; '), plug.thread, SEAT_WORDS[plug.seat]];
  if (plug.reachMm !== undefined) parts.push(w`reach ${plug.reachMm} mm`);
  if (plug.hexMm !== undefined) parts.push(w`hex ${plug.hexMm} mm`);
  if (plug.gasket !== undefined) parts.push(GASKET_WORDS[plug.gasket]);
  if (plug.condition === 'used') parts.push(w`USED plugs`);
  return parts.join(', ');
}

function ruleText({ rule, grades }: JobState['basis']['decision']): string {
  const graded = grades ? w`; grades of ILAC-G8` : '';
  switch (rule.kind) {
    case 'simple':
      return w`simple acceptance (ILAC-G8)${graded}`;
    case 'iso-14253-1':
      return w`1.65 u inside the limits (as ISO 14253-1)${graded}`;
    case 'guard-band':
      return w`guard band ${rule.r} U (ILAC-G8, JCGM 106)${graded}`;
    case 'probability':
      return w`probability of at least ${rule.atLeast * 100} %, both tails (JCGM 106)${graded}`;
  }
}

const SOURCE_KIND = phrases({
  'engine-maker': "the engine maker's service information",
  'plug-box': 'print on the plug box',
  'general-table': 'a general table, not for this engine',
  'invented-example': 'INVENTED EXAMPLE, not for any real engine',
});

/** How an adapter changes what the wrench shows. */
function adapterText(adapter: Adapter): string {
  const { armMm, offsetMm, angleDeg } = adapter;
  const gain = fixed(leverage(crowfootOf(adapter)), 3);
  return w`hand at ${armMm} mm, offset ${offsetMm} mm at ${angleDeg}°: the plug sees ${gain} times what the wrench shows`;
}

function specificationFacts(state: JobState): Fact[] {
  const { torque, tightenFirst, turn, gap, gapRules, threads, source } = state.order.specification;
  const { adapter, flexJoint, plug } = state.order;
  const wires = gapRules?.wires;
  const service = plug.condition === 'used' ? gapRules?.serviceLimit : undefined;
  const given = (label: string, value: string | undefined): Fact[] =>
    value === undefined ? [] : [{ label, value: clean(value) }];
  const title = [source.title, source.edition, source.date].filter((part) => part !== undefined).join(', ');
  return [
    ...given(w`First step, printed`, tightenFirst),
    { label: isByAngle(state.basis) ? w`Turn as printed` : w`Torque as printed`, value: clean(torque) },
    ...(turn === undefined ? [] : [{ label: w`Turn from contact, judged`, value: clean(turn) }]),
    { label: w`Gap as printed`, value: clean(gap ?? w`none`) },
    ...given(w`Used plug up to`, service && w`${service}, the service limit`),
    ...given(
      w`Gap by wires`,
      wires && w`${wires.go} passes, ${wires.noGo} does not; each within ${wires.within}`,
    ),
    ...given(w`Crowfoot`, adapter && adapterText(adapter)),
    ...given(
      w`Flex joint`,
      flexJoint && w`${FLEX_JOINT_WORDS[flexJoint.kind]}, bent by ${flexJoint.bentDeg}° at most`,
    ),
    { label: w`Threads`, value: THREADS_WORDS[threads] },
    { label: w`Source`, value: clean(title) },
    { label: w`Kind of source`, value: SOURCE_KIND[source.kind] },
    { label: w`Decision rule`, value: ruleText(state.basis.decision) },
  ];
}
