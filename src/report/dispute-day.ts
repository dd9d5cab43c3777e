/** A job as it was on its day: figures and sources of then, tools in force then, and what they proved. */

import { recordedOn } from '../audit/dispute.ts';
import type { LogEntry, StationEntry } from '../evidence/log.ts';
import { dueDate } from '../instrument/fitness.ts';
import type { InstrumentInUse } from '../instrument/instrument.ts';
import { isByAngle } from '../job/click.ts';
import { proofOf } from '../job/proof.ts';
import type { CylinderState, JobState } from '../job/state.ts';
import type { Judgement } from '../metrology/judgement.ts';
import type { FigureSource } from '../reading.ts';
import { figure, percent, UNIT_TEXT, type Unit, utc } from './figures.ts';
import type { Labelled, Part } from './paper.ts';
import type { Cell } from './table.ts';
import { cylinderVerdict, VERDICT_WORD, verdictOf } from './verdict.ts';
import { windowText } from './window-text.ts';
import { instrumentRefusalText, noted, noteLines, promiseWords, proofText } from './words/index.ts';

export const NOT_GIVEN = 'not given';

export function knownThen(
  state: JobState,
  entries: readonly LogEntry[],
  station: readonly StationEntry[],
): readonly Labelled[] {
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
    {
      label: isByAngle(state.basis) ? 'Turn as printed' : 'Torque as printed',
      value: `${specification.torque}, threads ${specification.threads}`,
    },
    { label: 'Gap as printed', value: specification.gap ?? 'none' },
    {
      label: 'Source',
      value: [source.title, source.edition, source.date].filter((one) => one !== undefined).join(', '),
    },
    { label: 'In the log since', value: recorded === null ? 'never' : utc(recorded) },
    { label: 'Torque accepted', value: `${torque.acceptance}, of ${torque.limits}` },
    { label: 'Gap accepted', value: gapWindow === null ? 'not measured' : windowText(gapWindow).acceptance },
    { label: 'Notes of the day', value: noteLines(state.order, state.basis.notes).join(' ') || 'none' },
  ];
}

export function endOf(state: JobState, entries: readonly LogEntry[]): string {
  const closing = entries.findLast(({ event }) => event.type === 'job-closed');
  if (closing === undefined) return 'still open';
  const complete = state.closed?.complete === true ? 'complete' : 'NOT COMPLETE';
  return `${complete}, ${utc(closing.at)} by ${closing.by}`;
}

export function toolRow(
  instrument: InstrumentInUse,
  { basis }: JobState,
  entries: readonly LogEntry[],
): readonly Cell[] {
  const { id, serial, certificate } = instrument;
  const due = dueDate(instrument);
  const rests =
    certificate === undefined
      ? `${promiseWords(instrument)}; no certificate`
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
    ({ by: who, refusal, reason }) =>
      `; ${who} answered for it (${instrumentRefusalText(refusal)}): ${reason}`,
  );
  return [{ text: id }, { text: serial ?? NOT_GIVEN }, { text: rests }, { text: inForce + by.join('') }];
}

const VOID = 'VOID: the readings of this job prove nothing.';

export function proofs(name: string, state: JobState): Part {
  return {
    kind: 'table',
    title: `${name}: what it came to`,
    note: state.voided === null ? proofText(proofOf(state)) : VOID,
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
        const pulls = cylinder.pulls.map(({ judgement, pull: { source } }) => ({ judgement, source }));
        const torque = standing(cylinder.torque, pulls);
        return [
          { text: String(cylinder.cylinder) },
          { text: VERDICT_WORD[verdict], verdict, bold: true },
          { text: judged(standing(cylinder.gap, cylinder.gaps), 'mm') },
          { text: judged(torque, 'N.m') },
          { text: torque === null ? '' : percent(torque.judgement.conformanceProbability) },
          { text: `${cylinder.gaps.length} gap, ${cylinder.pulls.length} pull` },
        ];
      }),
  };
}

/** The figures that stand: of the last OK once done, else of the last attempt that was judged. */
function standing(
  step: CylinderState['gap'],
  attempts: readonly (Pick<Figure, 'source'> & { readonly judgement: Judgement | null })[],
): Figure | null {
  const all = attempts.flatMap(({ judgement, source }) =>
    judgement === null ? [] : [{ judgement, source }],
  );
  return (step === 'done' ? all.findLast(({ judgement }) => judgement.result === 'OK') : all.at(-1)) ?? null;
}

interface Figure {
  readonly judgement: Judgement;
  readonly source: FigureSource;
}

function judged(standing: Figure | null, unit: Unit): string {
  if (standing === null) return 'none';
  const { judgement, source } = standing;
  const { value, expandedUncertainty } = judgement;
  const word = noted(VERDICT_WORD[verdictOf(judgement)], source);
  return `${figure(value, unit)} ± ${figure(expandedUncertainty, unit)} ${UNIT_TEXT[unit]} ${word}`;
}
